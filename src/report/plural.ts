/** "1 step", "2 steps", "no step" is left to the writer: here a number always stands. */
export function plural(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
