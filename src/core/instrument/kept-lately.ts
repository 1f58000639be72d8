/** How many answers are kept at most. */
const most = 24;

/**
 * A pure function that keeps what it answered last, so that the same question isn't worked out again.
 * Takes the function and what tells its questions apart. Gives the same answers; one that throws is not kept.
 */
export function keptLately<Asked, Answer>(
  answer: (asked: Asked) => Answer,
  keyOf: (asked: Asked) => string,
): (asked: Asked) => Answer {
  const kept = new Map<string, Answer>();
  return (asked) => {
    const key = keyOf(asked);
    const known = kept.get(key);
    const found = known === undefined ? answer(asked) : known;
    // The last one asked for stands last, the first one is forgotten first.
    kept.delete(key);
    kept.set(key, found);
    const [oldest] = kept.keys();
    if (kept.size > most && oldest !== undefined) kept.delete(oldest);
    return found;
  };
}
