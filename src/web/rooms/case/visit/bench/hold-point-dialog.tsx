import { useState } from "react";
import { holdPointWords, seenByWords } from "../../../../../record/words/visit-words.ts";
import { capital } from "../../../../words/capital.ts";
import type { Visit } from "../materials/use-visit.ts";
import { ChairDialog } from "./chair-dialog.tsx";
import { keysOf, type Target, Targets } from "./targets.tsx";
import { useBench } from "./use-bench.ts";
import { WordsLine } from "./words-line.tsx";

type HoldPoint = Visit["holdPoints"][number];

interface HoldPointDialogOptions {
  readonly close: () => void;
  /** Where a step asks for it. */
  readonly at?: HoldPoint["at"] | undefined;
}

const places = (["access", "workingLength", "coneFit", "other"] as const).map((value, index) => ({
  ...{ value, says: capital(holdPointWords[value]), hint: String(index + 1) },
}));
const lookers: readonly Target<HoldPoint["seenBy"]>[] = [
  { value: "supervisor", says: capital(seenByWords.supervisor), hint: "s" },
  { value: "nobody", says: capital(seenByWords.nobody), hint: "n" },
];

/** Where the supervisor looks: who looked, and what was said. */
export function HoldPointDialog({ close, at }: HoldPointDialogOptions) {
  const { visit, record, minute } = useBench("Hold point");
  const [place, setPlace] = useState(at);
  const [looker, setLooker] = useState<HoldPoint["seenBy"]>();
  const [says, setSays] = useState("");
  const save = () => {
    if (place === undefined || looker === undefined) return;
    const atMin = minute();
    const point: HoldPoint = {
      ...{ at: place, seenBy: looker, says: says.trim() },
      ...(atMin === undefined ? {} : { atMin }),
    };
    record(
      { ...visit, holdPoints: [...visit.holdPoints, point] },
      `${holdPointWords[point.at]}, ${seenByWords[point.seenBy]}`,
    );
    close();
  };
  const keys = { ...keysOf(places, setPlace), ...keysOf(lookers, setLooker) };
  return (
    <ChairDialog
      {...{ close, keys }}
      title="Hold point"
      records="Record the hold point"
      record={place !== undefined && looker !== undefined ? save : undefined}
      missing="Press what was looked at, and who looked."
    >
      <Targets label="Looked at" targets={places} value={place} choose={setPlace} />
      <Targets label="Who looked" targets={lookers} value={looker} choose={setLooker} />
      <WordsLine label="What was said" value={says} write={setSays} />
    </ChairDialog>
  );
}
