/** The three grounds that a drawing may stand on. */
export type ThemeName = "paper" | "dark" | "print";

/** Colours by what they are for; every text colour has at least 4.5:1 on both grounds. */
export interface Theme {
  readonly ground: string;
  readonly surface: string;
  /** Lines and words. */
  readonly ink: string;
  /** Words that stand back. */
  readonly quiet: string;
  /** Hairlines; never for words. */
  readonly hairline: string;
  /** The body of a tooth. */
  readonly dentine: string;
  /** Always means "look here". */
  readonly accent: string;
  /** A canal's course in space, as its trace has on a film. */
  readonly course: string;
}

/** The colours of each ground: warm paper, the dim room with its darkroom lamp, and white for the printer. */
export const themes: Readonly<Record<ThemeName, Theme>> = {
  paper: {
    ground: "#f4f1ea",
    surface: "#faf8f3",
    ink: "#24211d",
    quiet: "#6a6157",
    hairline: "#b9b0a2",
    dentine: "#fffdf9",
    accent: "#a6401b",
    course: "#1c5c4e",
  },
  dark: {
    ground: "#0b0a0a",
    surface: "#171614",
    ink: "#efe9e0",
    quiet: "#a89f93",
    hairline: "#5a544c",
    dentine: "#24211e",
    accent: "#ff9a5c",
    course: "#b6f2e2",
  },
  print: {
    ground: "#ffffff",
    surface: "#ffffff",
    ink: "#000000",
    quiet: "#4d4d4d",
    hairline: "#8c8c8c",
    dentine: "#ffffff",
    accent: "#8f2f0e",
    course: "#17493e",
  },
};
