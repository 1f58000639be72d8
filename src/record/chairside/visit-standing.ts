import type { BodyOf } from "../parts.ts";
import { openSteps, stepStanding } from "./visit-steps.ts";

type Visit = BodyOf<"visit">;

/** Where something of a visit is written. */
export type LeadsTo =
  | "timeOut"
  | "isolation"
  | "history"
  | "holdPoint"
  | "count"
  | "steps"
  | "lots"
  | "temporary"
  | "told"
  | "next"
  | "clock";

/** How one thing of a visit stands: done, open, or to be looked at. */
export interface Standing {
  readonly leads: LeadsTo;
  readonly stands: "done" | "open" | "look";
  readonly says: string;
}

/** What was checked of a visit and what is open, in a fixed order. */
export const visitStanding = (visit: Visit): readonly Standing[] => [
  timeOutStanding(visit),
  damStanding(visit),
  {
    leads: "history",
    ...(visit.historyConfirmed
      ? { stands: "done", says: "history confirmed" }
      : { stands: "open", says: "history not confirmed" }),
  },
  ...holdPointStanding(visit),
  countStanding(visit),
  ...stepsStanding(visit),
];

/** Whether the tooth was opened, as far as it is noted. */
const isOpened = ({ steps = [], holdPoints }: Visit): boolean =>
  holdPoints.some(({ at }) => at === "access") ||
  steps.some((step) => (step.about === "access" || step.holdPoint === "access") && stepStanding(step) === "done");

function timeOutStanding(visit: Visit): Standing {
  const { timeOut, timeOutCheck } = visit;
  if (timeOut === "toothAndSideChecked") return { leads: "timeOut", stands: "done", says: "time-out done" };
  if (timeOutCheck !== undefined)
    return { leads: "timeOut", stands: "look", says: `time-out: ${timeOutCheck.tooth} was named` };
  if (isOpened(visit)) return { leads: "timeOut", stands: "look", says: "access is noted, the time-out is not" };
  return { leads: "timeOut", stands: "open", says: "time-out not done" };
}

function damStanding({ isolation }: Visit): Standing {
  const { rubberDam, whyNot = "" } = isolation;
  if (rubberDam === "used") return { leads: "isolation", stands: "done", says: "rubber dam" };
  if (rubberDam === "notRecorded") return { leads: "isolation", stands: "open", says: "isolation not noted" };
  return whyNot === ""
    ? { leads: "isolation", stands: "look", says: "without rubber dam, reason not noted" }
    : { leads: "isolation", stands: "done", says: `without rubber dam: ${whyNot}` };
}

/** Hold points that the steps ask for and nobody has looked at; those that were looked at otherwise. */
function holdPointStanding({ steps = [], holdPoints }: Visit): readonly Standing[] {
  const asked = steps.flatMap(({ holdPoint }) => (holdPoint === undefined ? [] : [holdPoint]));
  const open = asked.filter((at) => !holdPoints.some((one) => one.at === at));
  const unseen = holdPoints.filter(({ seenBy }) => seenBy === "nobody").length;
  if (open.length > 0)
    return [{ leads: "holdPoint", stands: "open", says: `${countOf(open.length, "hold point")} open` }];
  if (unseen > 0)
    return [{ leads: "holdPoint", stands: "look", says: `${countOf(unseen, "hold point")} seen by nobody` }];
  return holdPoints.length === 0
    ? []
    : [{ leads: "holdPoint", stands: "done", says: `${countOf(holdPoints.length, "hold point")} seen` }];
}

function countStanding({ instrumentSet }: Visit): Standing {
  const { countedOut: out, countedIn: back } = instrumentSet ?? {};
  if (out === undefined && back === undefined)
    return { leads: "count", stands: "open", says: "instruments not counted" };
  if (out === undefined) return { leads: "count", stands: "open", says: `out not counted, ${back} in` };
  if (back === undefined) return { leads: "count", stands: "open", says: `${out} out, in not counted` };
  return { leads: "count", stands: out === back ? "done" : "look", says: `${out} out, ${back} in` };
}

function stepsStanding({ steps = [] }: Visit): readonly Standing[] {
  if (steps.length === 0) return [];
  const open = openSteps(steps).length;
  return [
    open === 0
      ? { leads: "steps", stands: "done", says: "no step open" }
      : { leads: "steps", stands: "open", says: `${open} of ${countOf(steps.length, "step")} open` },
  ];
}

/** What is still open before the patient leaves; empty where nothing is. */
export function openBeforeLeaving(visit: Visit): readonly Standing[] {
  const checked = visitStanding(visit).filter(({ stands, leads }) => stands !== "done" && asksAtTheEnd(visit, leads));
  return [
    ...checked,
    ...(stays(visit) && !visit.lots.some(({ lot }) => lot !== "")
      ? [open("lots", "no lot is noted of what stays in the tooth")]
      : []),
    ...(visit.temporary !== undefined && visit.temporary.thicknessMm === undefined
      ? [open("temporary", "the temporary filling's thickness is not noted")]
      : []),
    ...(visit.told === "" ? [open("told", "what was told to the patient is not written")] : []),
    ...(visit.nextOn === undefined ? [open("next", "no next appointment is noted")] : []),
    ...(visit.startedAt !== undefined && visit.endedAt === undefined ? [open("clock", "the clock runs")] : []),
  ];
}

const open = (leads: LeadsTo, says: string): Standing => ({ leads, stands: "open", says });

/** A count is asked for once instruments were used or counted out, the dam and the time-out once something was done. */
function asksAtTheEnd(visit: Visit, leads: LeadsTo): boolean {
  if (leads !== "count") return true;
  return visit.instruments.length > 0 || visit.instrumentSet !== undefined;
}

/** Whether something is noted that stays in the tooth. */
const stays = ({ medicament, temporary, orificeBarrier = "", buildUp = "", canals }: Visit): boolean =>
  (medicament !== undefined && medicament.kind !== "none") ||
  temporary !== undefined ||
  `${orificeBarrier}${buildUp}` !== "" ||
  canals.some(({ filledWith = "" }) => filledWith !== "");

const countOf = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;
