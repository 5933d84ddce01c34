import { expect, it } from 'vitest';
import { reportOf } from '../../app/shell/report';

it('tells a failure, and nothing that is quoted in it nor where the app is served from', () => {
  const error = new RangeError('no such order: "Hill Bakers" of \'Ann Smith\'');
  const report = reportOf(
    error,
    '\n    at StockRoom (https://shop.example/press/assets/StockRoom-1.js:1:20)',
  );
  expect(report).toMatch(/^Rollwright \d+\.\d+\.\d+, records of version \d+\n/);
  expect(report).toContain('RangeError: no such order: "…" of "…"');
  expect(report).toContain('at StockRoom (StockRoom-1.js:1:20)');
  expect(report).not.toMatch(/Hill|Smith|example/);
});

it('tells what was thrown that is no error', () => {
  expect(reportOf('Hill Bakers', '')).toMatch(/\nstring: \n/);
});
