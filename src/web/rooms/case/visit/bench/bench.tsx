import { type ReactNode, useEffect, useMemo, useRef, useState } from "react";
import { isAnswered, openStepAbout, withStepDone } from "../../../../../record/chairside/visit-steps.ts";
import { QuickEntry } from "../../entry/quick-entry.tsx";
import { MaterialDialogs } from "../materials/material-dialogs.tsx";
import { AfterwardsDialog } from "./afterwards-dialog.tsx";
import { CountDialog } from "./count-dialog.tsx";
import { HoldPointDialog } from "./hold-point-dialog.tsx";
import { IsolationDialog } from "./isolation-dialog.tsx";
import { NoteDialog } from "./note-dialog.tsx";
import { BenchContext, dialogThatLeads, goToPlace, type Noted, type Opened } from "./opened.ts";
import { TimeOutDialog } from "./time-out-dialog.tsx";
import { useBench } from "./use-bench.ts";
import "./bench.css";

/** The page of a visit with the one dialog that may stand open; a step that opened it is done once it recorded something. */
export function Bench({ children }: { readonly children: ReactNode }) {
  const { visit, record, minute } = useBench("Step done");
  const [opened, setOpened] = useState<Opened>();
  const latest = useRef({ visit, record, minute });
  latest.current = { visit, record, minute };
  const ways = useMemo(() => {
    const open = (what: Noted, asked?: number) => {
      const { visit: before, minute: now } = latest.current;
      const step = asked ?? (what === "timeOut" || what === "isolation" ? openStepAbout(before, what) : undefined);
      setOpened({ what, atMin: now(), before, ...(step === undefined ? {} : { step }) });
    };
    return {
      open,
      lead: (to: Parameters<typeof goToPlace>[0]) => {
        const dialog = dialogThatLeads(to);
        if (dialog === undefined) goToPlace(to);
        else open(dialog);
      },
    };
  }, []);
  const last = useRef<Opened>(undefined);
  // Looked at when a dialog closes and at no other time: what is typed elsewhere ticks nothing.
  useEffect(() => {
    const closed = opened === undefined ? last.current : undefined;
    last.current = opened;
    const now = latest.current;
    const step = closed?.step === undefined ? undefined : now.visit.steps?.[closed.step];
    if (closed?.step === undefined || step === undefined || !isAnswered(step, closed.before, now.visit)) return;
    now.record(withStepDone(now.visit, closed.step, now.minute()), `“${step.says}”`);
  }, [opened]);
  return (
    <BenchContext.Provider value={ways}>
      {children}
      {opened && <OpenedDialog opened={opened} close={() => setOpened(undefined)} />}
    </BenchContext.Provider>
  );
}

function OpenedDialog({ opened, close }: { readonly opened: Opened; readonly close: () => void }) {
  const { what, atMin, before, step } = opened;
  const holdPoint = step === undefined ? undefined : before.steps?.[step]?.holdPoint;
  switch (what) {
    case "timeOut":
      return <TimeOutDialog close={close} />;
    case "isolation":
      return <IsolationDialog close={close} />;
    case "holdPoint":
      return <HoldPointDialog close={close} at={holdPoint} />;
    case "note":
      return <NoteDialog close={close} />;
    case "count":
      return <CountDialog close={close} />;
    case "afterwards":
      return <AfterwardsDialog close={close} />;
    case "instrument":
      return <QuickEntry close={close} />;
    default:
      return <MaterialDialogs open={what} close={close} atMin={atMin} />;
  }
}
