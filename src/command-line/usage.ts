/** Says in one sentence what was wrong with a command line, naming the nearest thing that is known. */
import type { Command, CommanderError } from 'commander';
import { nearest } from '../house-style/nearest.ts';
import { listWords } from '../report/place.ts';

/** What commander puts between quotes: the option, argument or command it speaks of. */
function quoted(message: string): string {
  const start = message.indexOf("'");
  const end = message.lastIndexOf("'");
  return start >= 0 && end > start ? message.slice(start + 1, end) : '';
}

export function usageSentence(error: CommanderError, program: Command, command: Command | undefined): string {
  const word = quoted(error.message);
  const name = command === undefined ? 'rowproof' : `rowproof ${command.name()}`;
  switch (error.code) {
    case 'commander.unknownOption':
      return unknownOption(word, name, command ?? program);
    case 'commander.missingArgument':
      return command?.name() === 'replay'
        ? 'Name the draft and the row: rowproof replay DRAFT --row "Body 17".'
        : `Name a draft, a folder of drafts, or - for standard input: ${name} DRAFT.`;
    case 'commander.optionMissingArgument':
      return `${optionName(word)} wants something after it: ${word}.`;
    case 'commander.missingMandatoryOptionValue':
      return 'Name the row: rowproof replay DRAFT --row "Body 17".';
    case 'commander.excessArguments':
      return command?.name() === 'replay'
        ? 'Replay works on one draft; a row of more than one word wants quotes: --row "Body 17".'
        : `${name} takes fewer words than were given; "${name} --help" shows how it is used.`;
    default:
      return `${error.message.replace(/^error: /, '').replace(/[.\s]+$/, '')}.`;
  }
}

const optionName = (flags: string) => flags.split(/[ ,]+/).find((part) => part.startsWith('--')) ?? flags;

function unknownOption(word: string, name: string, command: Command): string {
  const given = word.split('=')[0] ?? word;
  const known = [...command.options.map((option) => option.long ?? ''), '--help'].filter((long) => long !== '');
  const near = nearest(given, known);
  return near === null
    ? `${name} has no option ${given}; it has ${listWords(known)}.`
    : `${name} has no option ${given}; the nearest is ${near}.`;
}

/** A first word that is no command: a command typed wrongly, or a draft without the command before it. */
export function unknownCommand(word: string, program: Command): string {
  const known = program.commands.map((command) => command.name());
  const near = nearest(word, known);
  if (near !== null) return `There is no command "${word}"; the nearest is "${near}".`;
  return /[./\\]/.test(word)
    ? `Say what to do with ${word}: rowproof proof ${word}.`
    : `There is no command "${word}"; there are ${listWords(known)}.`;
}
