/** What each colour of the standard's size code looks like; a rim and its name in words stand with it everywhere. */
const looks: Readonly<Record<string, string>> = {
  white: "#f7f7f5",
  yellow: "#f0cf2f",
  red: "#c93a32",
  blue: "#2f62b0",
  green: "#3a8a4c",
  black: "#1b1b1b",
  pink: "#e69ab4",
  grey: "#95989c",
  purple: "#7b4a9b",
};

/** The look of a colour of the size code by its name; undefined for a size that has none. */
export const colourOfStandard = (name: string | undefined): string | undefined =>
  name === undefined ? undefined : looks[name];
