/** Work done by several hands at once and handed over in the order it was given. */

/**
 * The results in the order of the jobs, whoever is done first. No more than `ahead` jobs are begun before the oldest of them
 * is handed over, so that a slow draft does not fill the memory with those behind it.
 */
export async function* inOrder<Job, Result>(
  jobs: readonly Job[],
  hands: readonly ((job: Job) => Promise<Result>)[],
  ahead: number,
): AsyncGenerator<Result> {
  const begun: Promise<Result>[] = [];
  const busy: Promise<unknown>[] = hands.map(() => Promise.resolve());
  let next = 0;
  while (next < jobs.length || begun.length > 0) {
    while (next < jobs.length && begun.length < ahead) {
      const free = await Promise.race(busy.map((each, hand) => each.then(() => hand)));
      const result = (hands[free] as (job: Job) => Promise<Result>)(jobs[next] as Job);
      // Whether it goes well is seen where the result is handed over.
      busy[free] = result.catch(() => {});
      begun.push(result);
      next += 1;
    }
    yield await (begun.shift() as Promise<Result>);
  }
}
