/** What is worked out of a draft once and asked for often. */

/** The same function, which keeps its answer for as long as what it was asked about is in use. Only for what never changes. */
export function once<Of extends object, Found>(find: (of: Of) => Found): (of: Of) => Found {
  const answers = new WeakMap<Of, { readonly found: Found }>();
  return (of) => {
    const known = answers.get(of);
    if (known !== undefined) return known.found;
    const found = find(of);
    answers.set(of, { found });
    return found;
  };
}
