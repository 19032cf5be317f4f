import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    coverage: { provider: 'v8', include: ['src/**', 'grammar/**', 'rules/**'], reportsDirectory: '.cache/coverage' },
  },
  cacheDir: '.cache/vite',
});
