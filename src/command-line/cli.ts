/** The words of the command line. What they do is in `commands.ts`. */
import { Command, CommanderError } from 'commander';
import { version } from '../version.ts';
import {
  type ErrataOptions,
  type ExitStatus,
  errataCommand,
  type ProofOptions,
  proofCommand,
  type ReplayOptions,
  type ReportOptions,
  replayCommand,
  rulesCommand,
  type TallyOptions,
  tallyCommand,
} from './commands.ts';
import type { LoadLibrary } from './library.ts';
import { isStop, stop, unforeseenSentence } from './stop.ts';
import { unknownCommand, usageSentence } from './usage.ts';
import type { World } from './world.ts';

const drafts = 'a file, a folder (every *.md below it), or - for standard input';

interface Chosen {
  command: Command | undefined;
  /** What the command does once the words are understood. */
  run: (() => Promise<ExitStatus>) | undefined;
}

/** Runs the command line and returns its exit status. Never throws; everything it has to say is said in `world`. */
export async function runCommandLine(words: readonly string[], world: World, load: LoadLibrary): Promise<ExitStatus> {
  try {
    return await run(words, world, load);
  } catch (error) {
    await world.err.write(`${isStop(error) ? error.message : unforeseenSentence(error)}\n`);
    return 2;
  }
}

async function run(given: readonly string[], world: World, load: LoadLibrary): Promise<ExitStatus> {
  // "help" and "help proof" are what many type first.
  const words = given[0] === 'help' ? [...given.slice(1), '--help'] : given;
  const written: string[] = [];
  const chosen: Chosen = { command: undefined, run: undefined };
  const program = programOf(world, load, chosen, (text) => written.push(text));
  if (words.length === 0) {
    await world.err.write(`Say what to do, for instance: rowproof proof DRAFT.\n\n${program.helpInformation()}`);
    return 2;
  }
  const first = words.find((word) => word !== '--no-color') ?? '';
  if (first !== '' && !first.startsWith('-') && !program.commands.some((command) => command.name() === first)) {
    throw stop(unknownCommand(first, program));
  }
  chosen.command = program.commands.find((command) => command.name() === first);
  try {
    program.parse(words, { from: 'user' });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    if (error.exitCode !== 0 && error.code !== 'commander.help') throw stop(usageSentence(error, program, chosen.command));
    await world.out.write(written.join(''));
    return 0;
  }
  return chosen.run === undefined ? 0 : await chosen.run();
}

function programOf(world: World, load: LoadLibrary, chosen: Chosen, write: (text: string) => void): Command {
  const program = new Command('rowproof')
    .description('Reads a knitting pattern, works every row in every size, and says where the count goes wrong.')
    .version(version, '--version', 'print the version')
    .helpOption('-h, --help', 'show how it is used')
    .helpCommand(false)
    .option('--no-color', 'no colour on a terminal')
    .exitOverride()
    .configureOutput({ writeOut: write, writeErr: write, outputError: () => {} })
    .addHelpText(
      'after',
      `\nA DRAFT is ${drafts}.\nExit status: 0 nothing at the gate or above; 1 findings there; 2 the run could\nnot be made.\nNothing is ever written into a draft.`,
    );

  // Commander gives an option that program and command share to the program, wherever it stands.
  const withColor = <Options extends ReportOptions>(options: Options): Options => ({
    ...options,
    color: options.color && program.opts<{ color: boolean }>().color,
  });
  const command = (usage: string, about: string) =>
    program
      .command(usage)
      .description(about)
      .helpOption('-h, --help', 'show how it is used')
      .allowExcessArguments(false)
      .option('--output <file>', 'write the report into this file')
      .option('--no-color', 'no colour on a terminal');
  const house = ['--house <file>', 'the house style to use, instead of the house-style.yaml found upward from the draft'] as const;

  command('proof', 'what stops a knitter, questions to the author, house style')
    .argument('<draft...>', drafts)
    .option('--format <format>', 'text, json, sarif, junit or html', 'text')
    .option('--gate <level>', 'the level from which a finding fails the run: error, query or style', 'error')
    .option('--record <file>', 'findings known of an old catalogue; only new ones count, and the file only grows shorter')
    .option('--start-record', 'make the file of --record from what is found now')
    .option(...house)
    .action((given: string[], options: ProofOptions) => {
      chosen.run = () => proofCommand(given, withColor(options), world, load);
    });
  command('tally', 'the count sheet: stitches before and after every row, in every size')
    .argument('<draft...>', drafts)
    .option('--format <format>', 'text, json, csv or html', 'text')
    .option('--size <size>', 'with --format html: the sheet of this size for a test knitter')
    .option('--formulas', 'with --format csv: the counts of one draft as formulas, to change a number and see the rest move')
    .option(...house)
    .action((given: string[], options: TallyOptions) => {
      chosen.run = () => tallyCommand(given, withColor(options), world, load);
    });
  command('replay', 'one row, stitch by stitch')
    .argument('<draft>', 'a file, or - for standard input')
    .requiredOption('--row <row>', 'the row, with its section where that is needed: "Body 17"')
    .option('--size <size>', 'the size, by its name in the draft')
    .option('--from <stitches>', 'begin with this many stitches instead of the count the draft leads to')
    .option('--format <format>', 'text or json', 'text')
    .option(...house)
    .action((given: string, options: ReplayOptions) => {
      chosen.run = () => replayCommand(given, withColor(options), world, load);
    });
  command('errata', 'what has changed between two versions of a draft, for those who knit from the older one')
    .argument('<older>', 'the version that is out')
    .argument('<newer>', 'the version that replaces it')
    .option('--format <format>', 'text or json', 'text')
    .option(...house)
    .action((older: string, newer: string, options: ErrataOptions) => {
      chosen.run = () => errataCommand(older, newer, withColor(options), world, load);
    });
  command('rules', 'the rules, or one rule with its wrong and its right example')
    .argument('[id]', 'the id of one rule')
    .option('--format <format>', 'text or json', 'text')
    .action((id: string | undefined, options: ReportOptions) => {
      chosen.run = () => rulesCommand(id, withColor(options), world, load);
    });
  return program;
}
