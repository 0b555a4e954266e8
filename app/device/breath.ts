/** For work over long lists: awaited after each piece, it lets taps and drawing in whenever so many milliseconds are used up. */
export function breath(every = 16): () => Promise<void> {
  let since = performance.now();
  return async () => {
    if (performance.now() - since < every) return;
    await new Promise((resolve) => setTimeout(resolve));
    since = performance.now();
  };
}
