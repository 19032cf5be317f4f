import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    // Nothing is timed: a test may only end because it hangs.
    testTimeout: 60_000,
    include: ['test/**/*.test.ts'],
    coverage: { provider: 'v8', include: ['src/**', 'grammar/**', 'rules/**'], reportsDirectory: '.cache/coverage' },
  },
  cacheDir: '.cache/vite',
});
