import type { BodyOf } from "../record/parts.ts";

type Dose = BodyOf<"visit">["solvent"][number];

/** A dose's solvent by its name: its own where its numbers are a person's. */
export const solventNamed = ({ solvent, own }: Pick<Dose, "solvent" | "own">): string =>
  solvent === "other" ? (own?.name ?? "other") : solvent;

/** The solvents of a visit, each once, in the order in which they were used. */
export const solventsOf = ({ solvent }: Pick<BodyOf<"visit">, "solvent">): readonly string[] => [
  ...new Set(solvent.map(solventNamed)),
];
