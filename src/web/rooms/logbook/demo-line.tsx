import { useMutation, useQueryClient } from "@tanstack/react-query";
import { Link } from "wouter";
import { treatmentWords, wordFor } from "../../../record/words/case-words.ts";
import { useAnnounce } from "../../parts/announcer.tsx";
import { Button } from "../../parts/button.tsx";
import { DemoMark } from "../../parts/demo-mark.tsx";
import { ask, type Refused } from "../../record/api.ts";
import { useCases, useSession, useSettings, useTeeth } from "../../record/readings.ts";
import { toothInNotation } from "../../words/tooth-words.ts";

/** The cases of the demo that are told from the first day to the last recall. */
const workedOut = ["demo-a", "demo-b", "demo-c"];

function WorkedOut() {
  const cases = useCases();
  const teeth = useTeeth();
  const settings = useSettings();
  const shown = workedOut.flatMap((id) => cases.data?.filter(({ caseId }) => caseId === id) ?? []);
  if (shown.length === 0) return null;
  return (
    <span className="demo-line-cases">
      Told in full:
      {shown.map(({ caseId, tooth, treatment }) => (
        <Link key={caseId} href={`/case/${caseId}`}>
          {toothInNotation(tooth, teeth.data, settings.data?.notation ?? "twoDigit")}{" "}
          {wordFor(treatmentWords, treatment)}
        </Link>
      ))}
    </span>
  );
}

/** What stands of the demo, and the one press that takes it away or brings it back. */
export function DemoLine() {
  const session = useSession();
  const client = useQueryClient();
  const announce = useAnnounce();
  const change = useMutation<unknown, Refused, "POST" | "DELETE">({
    mutationFn: (method) => ask("/demo", { method }),
    onSuccess: (_, method) =>
      announce(
        method === "DELETE" ? "The demo is removed; one press loads it again as it was at first" : "The demo is loaded",
      ),
    onError: (error) => announce(error.message),
    onSettled: () => void client.invalidateQueries(),
  });
  const demo = session.data?.demo;
  if (demo === undefined) return null;
  if (demo === "loading" || change.isPending) return <p className="demo-line">The demo is being made ready.</p>;
  return (
    <footer className="demo-line">
      {demo === "loaded" ? (
        <>
          <DemoMark />
          <span>Cases made up to show what Canalog does; what you change in them goes with them.</span>
          <WorkedOut />
          <Button weight="bare" onClick={() => change.mutate("DELETE")}>
            Remove the demo
          </Button>
        </>
      ) : (
        <Button weight="bare" onClick={() => change.mutate("POST")}>
          Load the demo: invented cases
        </Button>
      )}
    </footer>
  );
}
