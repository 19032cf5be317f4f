/** The rows worked so far, for as long as later words may call on them. */
import type { Worked } from './play.ts';

const longestMemory = 600;

export function remember(history: Worked[], worked: Worked): void {
  const last = history.at(-1);
  if (
    last !== undefined &&
    last.row === null &&
    worked.row === null &&
    last.change === 0 &&
    worked.change === 0 &&
    last.textSpan.start === worked.textSpan.start
  )
    history[history.length - 1] = { ...last, times: last.times + worked.times };
  else history.push(worked);
  if (history.length > longestMemory) history.splice(0, history.length - longestMemory);
}
