import { minuteNow } from "../../../../../record/chairside/visit-clock.ts";
import { partsOf } from "../../../../../record/parts.ts";
import { useSettings, useTeeth } from "../../../../record/readings.ts";
import { toothInNotation } from "../../../../words/tooth-words.ts";
import { useCaseNow } from "../../case-now.ts";
import { useVisit } from "../materials/use-visit.ts";

/** The visit as it is being written, its minute, and how something whole is recorded in it as one named gesture. */
export function useBench(label: string) {
  const { visit, readOnly, record } = useVisit(label);
  /** The minute of the visit at this moment; absent while its clock does not run. */
  const minute = () => minuteNow(visit, Date.now());
  return { visit, record, minute, readOnly };
}

/** The tooth of the case: in two digits, as the person writes it, and its name; empty where no case is shown. */
export function useToothOfCase() {
  const { parts } = useCaseNow();
  const teeth = useTeeth().data;
  const twoDigit = partsOf(parts, "case")[0]?.body.tooth ?? "";
  const notation = useSettings().data?.notation ?? "twoDigit";
  return {
    twoDigit,
    written: toothInNotation(twoDigit, teeth, notation),
    name: teeth?.find((tooth) => tooth.twoDigit === twoDigit)?.name ?? "",
  };
}
