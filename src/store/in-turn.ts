/** One at a time: each piece of work starts when the one before it has ended, well or not. */
export function inTurn(): <Given>(work: () => Promise<Given>) => Promise<Given> {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const mine = last.then(work, work);
    last = mine.catch(() => undefined);
    return mine;
  };
}
