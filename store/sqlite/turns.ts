/**
 * Lets callers through one at a time, in the order they came, with a breath
 * for the rest of the program between two. The one connection of SQLite would
 * otherwise go to whoever asks fastest, and those who read on and on would
 * keep a writer waiting for ever.
 */
export function turns(): <T>(run: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (run) => {
    const mine = last.then(run);
    // A fault is the caller's to hear; the next in line has its turn all the same.
    last = mine.catch(() => undefined).then(() => new Promise<void>((go) => setImmediate(go)));
    return mine;
  };
}
