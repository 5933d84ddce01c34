/** How long storage may take to answer, in milliseconds: at first, and once it is known to be silent. */
const PATIENCE = { first: 2300, silent: 200 };

let isSilent = false;

/**
 * Waits for an answer of storage. Where there was none before, it is waited for shortly only, so that the page begins
 * in one patience, not in the sum of several.
 * @throws {DOMException} `TimeoutError` if it has not come in time
 */
export function inTime<Value>(answer: Promise<Value>): Promise<Value> {
  return new Promise((resolve, reject) => {
    const late = () => {
      isSilent = true;
      reject(new DOMException('storage does not answer', 'TimeoutError'));
    };
    const timer = setTimeout(late, isSilent ? PATIENCE.silent : PATIENCE.first);
    answer
      .then((value) => {
        isSilent = false;
        resolve(value);
      }, reject)
      .finally(() => clearTimeout(timer));
  });
}
