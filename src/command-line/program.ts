/** All of the command line but its door: loaded for every command except `--version`. */
export { runCommandLine } from './cli.ts';
export { loadLibrary } from './library.ts';
export { serve } from './threads.ts';
export { realWorld } from './world.ts';
