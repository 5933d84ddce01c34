/**
 * The PDF reader's build for older browsers puts slow functions of its own in place of some of the engine’s, such as `push` and
 * `JSON.parse`. Tests share a worker: each runs with the engine’s own, as the app does where PDFs are read in a worker apart.
 */
import { afterAll, beforeAll } from 'vitest';

const OBJECTS = [Array.prototype, Function.prototype, JSON];
const own = OBJECTS.map((object) => Object.getOwnPropertyDescriptors(object));

function putBack(): void {
  OBJECTS.forEach((object, at) => {
    for (const [name, descriptor] of Object.entries(own[at] ?? {}))
      if (Object.getOwnPropertyDescriptor(object, name)?.value !== descriptor.value)
        Object.defineProperty(object, name, descriptor);
  });
}

// After the imports of a file, and after what its tests load.
beforeAll(putBack);
afterAll(putBack);
