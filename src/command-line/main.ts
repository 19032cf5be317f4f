/** Where the program begins. The version is answered before anything else is loaded. */
import { isMainThread } from 'node:worker_threads';
import { version } from '../version.ts';

async function main(words: readonly string[]): Promise<void> {
  if (!isMainThread) {
    const [{ serve }, { loadLibrary }] = await Promise.all([import('./threads.ts'), import('./library.ts')]);
    await serve(loadLibrary);
    return;
  }
  if (words[0] === '--version' && words.length === 1) {
    process.stdout.write(`${version}\n`);
    return;
  }
  const [{ runCommandLine }, { realWorld }, { loadLibrary }] = await Promise.all([
    import('./cli.ts'),
    import('./world.ts'),
    import('./library.ts'),
  ]);
  // The program is one CommonJS file, which a thread can be given.
  process.exitCode = await runCommandLine(words, { ...realWorld(), program: __filename }, loadLibrary);
}

main(process.argv.slice(2)).catch((error: unknown) => {
  const words = error instanceof Error ? error.message.split('\n')[0] : String(error);
  process.stderr.write(`rowproof stopped: ${words}. Please report this.\n`);
  process.exitCode = 2;
});
