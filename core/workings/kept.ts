/**
 * What is worked out from something that stays, such as a file of facts: made
 * the first time it is asked for, and kept as long as that thing is. Seen from
 * outside it is made each time, only faster.
 */
export function keptFor<Key extends object, Made>(make: (key: Key) => Made): (key: Key) => Made {
  const kept = new WeakMap<Key, { readonly made: Made }>();
  return (key) => {
    const before = kept.get(key);
    if (before !== undefined) return before.made;
    const made = make(key);
    kept.set(key, { made });
    return made;
  };
}

/**
 * The same for what a name stands for, such as all sides of a case. Holds at
 * most `most` of them; then it begins afresh, so that it never grows without end.
 */
export function keptByName<From, Made>(make: (from: From) => Made, most = 1000): (name: string, from: From) => Made {
  const kept = new Map<string, { readonly made: Made }>();
  return (name, from) => {
    const before = kept.get(name);
    if (before !== undefined) return before.made;
    if (kept.size >= most) kept.clear();
    const made = make(from);
    kept.set(name, { made });
    return made;
  };
}
