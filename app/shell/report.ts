import { version } from '../../package.json';
import { MODEL_VERSION } from '../../src/model';

/** A message without what is quoted in it, which may be of the shop's own data. */
const withoutQuotes = (message: string): string =>
  message.replace(/(["'`“”‘’«»]).*?(["'`“”‘’«»]|$)/gs, '"…"').slice(0, 500);

/** Addresses without where the app is served from. */
const withoutPlaces = (stack: string): string => stack.replace(/\b\w+:\/\/[^\s)]*\//g, '');

/**
 * What is told of a failure to whoever mends the app: versions, message and the components it came through. Nothing of the book is in
 * it, and it goes nowhere by itself.
 */
export function reportOf(error: unknown, componentStack: string): string {
  const { name, message } = error instanceof Error ? error : { name: typeof error, message: '' };
  return [
    `Rollwright ${version}, records of version ${MODEL_VERSION}`,
    `${name}: ${withoutQuotes(message)}`,
    withoutPlaces(componentStack).trim(),
    '',
  ].join('\n');
}
