/** Colour is a help, never the only sign. The plain paint leaves every word as it is. */
import type { Level } from '../../rules/rule.ts';

export interface Paint {
  strong(text: string): string;
  quiet(text: string): string;
  level(text: string, level: Level): string;
}

export const plainPaint: Paint = {
  strong: (text) => text,
  quiet: (text) => text,
  level: (text) => text,
};

const code = (open: number, close: number) => (text: string) => (text === '' ? '' : `\u001b[${open}m${text}\u001b[${close}m`);
const levelCode: Readonly<Record<Level, (text: string) => string>> = {
  error: code(31, 39),
  query: code(33, 39),
  style: code(36, 39),
};

/** For terminals that show colour. */
export const terminalPaint: Paint = {
  strong: code(1, 22),
  quiet: code(2, 22),
  level: (text, level) => levelCode[level](text),
};
