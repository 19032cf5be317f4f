/** Colour, width and the progress line. Colour goes only to a terminal and never says anything alone. */
import type { World } from './world.ts';

const pageWidth = 80;

export interface Layout {
  readonly width: number;
  readonly colour: boolean;
}

/** How a report is laid out where it goes: a terminal between 60 and 100 columns wide, anything else a page of 80. */
export function layoutOf(world: World, color: boolean, toFile: boolean): Layout {
  if (toFile || !world.out.isTerminal) return { width: pageWidth, colour: false };
  const width = Math.min(100, Math.max(60, world.out.columns ?? pageWidth));
  return { width, colour: color && showsColour(world) };
}

/** A NO_COLOR that is set to anything asks for none (no-color.org), and so does a terminal that calls itself dumb. */
function showsColour(world: World): boolean {
  const { NO_COLOR, TERM } = world.environment;
  return (NO_COLOR === undefined || NO_COLOR === '') && TERM !== 'dumb';
}

export interface Progress {
  /** Says which of the drafts is read now, once the run has taken longer than a second. */
  step(done: number, all: number, path: string): Promise<void>;
  clear(): Promise<void>;
}

/** One line on a terminal that is written over and wiped at the end; silent elsewhere. */
export function progressLine(world: World): Progress {
  const started = world.now();
  let shown = false;
  return {
    async step(done, all, path) {
      if (!world.err.isTerminal || all < 2 || world.now() - started < 1000) return;
      shown = true;
      const columns = Math.max(20, (world.err.columns ?? pageWidth) - 1);
      await world.err.write(`\r\u001b[K${`Draft ${done} of ${all}: ${path}`.slice(0, columns)}`);
    },
    async clear() {
      if (shown) await world.err.write('\r\u001b[K');
    },
  };
}
