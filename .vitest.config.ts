import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    // Nothing is timed: a test may only end because it hangs.
    testTimeout: 60_000,
    include: ['test/**/*.test.ts'],
    // The library keeps no state that a test could see, so the files of one worker share its modules: a third of the time.
    isolate: false,
    coverage: { provider: 'v8', include: ['src/**', 'grammar/**', 'rules/**'], reportsDirectory: '.cache/coverage' },
  },
  cacheDir: '.cache/vite',
});
