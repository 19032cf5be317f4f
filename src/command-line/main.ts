/** Where the program begins. The version is answered before anything else is loaded. */
import { isMainThread } from 'node:worker_threads';
import { version } from '../version.ts';

async function main(words: readonly string[]): Promise<void> {
  if (isMainThread && words[0] === '--version' && words.length === 1) {
    process.stdout.write(`${version}\n`);
    return;
  }
  const { loadLibrary, realWorld, runCommandLine, serve } = await import('./program.ts');
  if (!isMainThread) {
    await serve(loadLibrary);
    return;
  }
  // A thread is given this same file.
  process.exitCode = await runCommandLine(words, { ...realWorld(), program: __filename }, loadLibrary);
}

main(process.argv.slice(2)).catch((error: unknown) => {
  const words = error instanceof Error ? error.message.split('\n')[0] : String(error);
  process.stderr.write(`rowproof stopped: ${words}. Please report this.\n`);
  process.exitCode = 2;
});
