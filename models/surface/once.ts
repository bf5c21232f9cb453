/** `make`, but made only once for each of its objects: these are drawn once and never change. */
export function once<Of extends object, Made>(make: (of: Of) => Made): (of: Of) => Made {
  const made = new WeakMap<Of, { readonly made: Made }>();
  return (of) => {
    let known = made.get(of);
    if (!known) {
      known = { made: make(of) };
      made.set(of, known);
    }
    return known.made;
  };
}
