/** Where the program begins. The version is answered before anything else is loaded. */
import { version } from '../version.ts';

async function main(words: readonly string[]): Promise<void> {
  if (words[0] === '--version' && words.length === 1) {
    process.stdout.write(`${version}\n`);
    return;
  }
  const [{ runCommandLine }, { realWorld }, { loadLibrary }] = await Promise.all([
    import('./cli.ts'),
    import('./world.ts'),
    import('./library.ts'),
  ]);
  process.exitCode = await runCommandLine(words, realWorld(), loadLibrary);
}

main(process.argv.slice(2)).catch((error: unknown) => {
  const words = error instanceof Error ? error.message.split('\n')[0] : String(error);
  process.stderr.write(`rowproof stopped: ${words}. Please report this.\n`);
  process.exitCode = 2;
});
