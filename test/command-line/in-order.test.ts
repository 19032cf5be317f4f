import { expect, test } from 'vitest';
import { inOrder } from '../../src/command-line/in-order.ts';

/** A hand whose jobs are done when the test says so. */
function handsAtWork(count: number) {
  const begun: number[] = [];
  const finish = new Map<number, (result: string) => void>();
  const hand = (job: number) =>
    new Promise<string>((resolve) => {
      begun.push(job);
      finish.set(job, resolve);
    });
  return { begun, finish: (job: number) => finish.get(job)?.(`done ${job}`), hands: Array.from({ length: count }, () => hand) };
}
const aWhile = () => new Promise((resolve) => setImmediate(resolve));

test('whoever is done first, the results come in the order of the jobs', async () => {
  const { hands, finish } = handsAtWork(2);
  const results = inOrder([0, 1, 2], hands, 3);
  const first = results.next();
  await aWhile();
  finish(1);
  await aWhile();
  finish(2);
  await aWhile();
  finish(0);
  expect([(await first).value, (await results.next()).value, (await results.next()).value, (await results.next()).done]).toEqual([
    'done 0',
    'done 1',
    'done 2',
    true,
  ]);
});

test('a hand has one job at a time, and no job is begun too far ahead of the oldest', async () => {
  const { begun, hands, finish } = handsAtWork(2);
  const results = inOrder([0, 1, 2, 3, 4], hands, 3);
  const first = results.next();
  await aWhile();
  expect(begun).toEqual([0, 1]);
  finish(1);
  await aWhile();
  expect(begun).toEqual([0, 1, 2]);
  finish(2);
  await aWhile();
  expect(begun).toEqual([0, 1, 2]);
  finish(0);
  await first;
  void results.next();
  await aWhile();
  expect(begun).toEqual([0, 1, 2, 3]);
});

test('a job that fails fails where its result is asked for', async () => {
  const results = inOrder([0, 1], [async (job: number) => Promise.reject(new Error(`lost ${job}`))], 2);
  await expect(results.next()).rejects.toThrow('lost 0');
});
