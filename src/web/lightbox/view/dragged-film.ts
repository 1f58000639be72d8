const type = "application/x-film-of-case";

/** A film of the strip on its way to a pane. */
export const filmDragged = {
  put: (carried: DataTransfer, filmId: string): void => {
    carried.setData(type, filmId);
    carried.effectAllowed = "copy";
  },
  isIn: (carried: DataTransfer): boolean => carried.types.includes(type),
  from: (carried: DataTransfer): string | undefined => carried.getData(type) || undefined,
};
