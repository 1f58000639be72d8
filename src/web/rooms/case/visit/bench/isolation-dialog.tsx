import { useState } from "react";
import { ChairDialog } from "./chair-dialog.tsx";
import { keysOf, type Target, Targets } from "./targets.tsx";
import { useBench } from "./use-bench.ts";
import { WordsLine } from "./words-line.tsx";

const ways: readonly Target<"used" | "notUsed">[] = [
  { value: "used", says: "Rubber dam", hint: "1" },
  { value: "notUsed", says: "Without", hint: "2" },
];

/** Rubber dam, or why not. */
export function IsolationDialog({ close }: { readonly close: () => void }) {
  const { visit, record } = useBench("Isolation");
  const [way, setWay] = useState<"used" | "notUsed">();
  const [why, setWhy] = useState("");
  const save = () => {
    const because = why.trim();
    record(
      way === "used"
        ? { ...visit, isolation: { rubberDam: "used" } }
        : { ...visit, isolation: { rubberDam: "notUsed", ...(because === "" ? {} : { whyNot: because }) } },
      way === "used" ? "rubber dam" : "without rubber dam",
    );
    close();
  };
  return (
    <ChairDialog
      title="Isolation"
      close={close}
      keys={keysOf(ways, setWay)}
      records="Record it"
      record={way === undefined ? undefined : save}
    >
      <Targets label="How the tooth is kept apart" targets={ways} value={way} choose={setWay} />
      {way === "notUsed" && <WordsLine label="Why without, and how instead" value={why} write={setWhy} />}
    </ChairDialog>
  );
}
