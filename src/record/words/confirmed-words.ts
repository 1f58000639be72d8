import type { BodyOf } from "../parts.ts";
import { agentWords, solutionWords, solventWords } from "./visit-words.ts";

type Visit = BodyOf<"visit">;
type Confirmed = NonNullable<Visit["anaesthetic"][number]["confirmed"]>;

/** Which rows of a visit a person stood by, by what they are of. */
const rowsOf = {
  anaesthetic: ({ anaesthetic }: Visit) =>
    anaesthetic.map(({ agent, confirmed }) => ({ name: agentWords[agent], confirmed })),
  irrigation: ({ irrigation }: Visit) =>
    irrigation.map(({ solution, named, confirmed }) => ({ name: named || solutionWords[solution], confirmed })),
  solvent: ({ solvent: doses }: Visit) =>
    doses.map(({ solvent, own, confirmed }) => ({ name: own?.name ?? solventWords[solvent], confirmed })),
};

/** What of a visit was asked before it was recorded, who confirmed it and why, in the order of the rows: one line each. */
export const confirmationsOf = (visit: Visit, of: keyof typeof rowsOf): string[] =>
  rowsOf[of](visit).flatMap(({ name, confirmed }, index) =>
    confirmed === undefined ? [] : [`${name}, row ${index + 1}: ${confirmedInWords(confirmed)}`],
  );

function confirmedInWords({ by, because = "", asked }: Confirmed): string {
  const reason = because === "" ? "" : `, because: ${because}`;
  return `confirmed by ${by}${reason}. Asked: ${asked.join(" ")}`;
}
