import { lazy, Suspense, useState } from "react";
import { Route, Switch } from "wouter";
import { EmergencyLink } from "./parts/emergency-link.tsx";
import { NothingHere } from "./parts/nothing-here.tsx";
import { Opening } from "./parts/opening.tsx";
import { RoomBoundary } from "./parts/room-boundary.tsx";
import { SayRefusal } from "./parts/say-refusal.tsx";
import { ShortcutSheet } from "./parts/shortcut-sheet.tsx";
import { useShortcut } from "./parts/shortcuts.ts";
import { useSettings } from "./record/readings.ts";
import { EmergencyRoom } from "./rooms/emergency/emergency-room.tsx";
import { FirstStart } from "./rooms/first-start/first-start.tsx";
import { LogbookRoom } from "./rooms/logbook/logbook-room.tsx";

const CaseRoom = lazy(async () => ({ default: (await import("./rooms/case/case-room.tsx")).CaseRoom }));
const DueRoom = lazy(async () => ({ default: (await import("./rooms/logbook/due/due-room.tsx")).DueRoom }));
const DocumentsRoom = lazy(async () => ({
  default: (await import("./rooms/documents/documents-room.tsx")).DocumentsRoom,
}));
const CabinetRoom = lazy(async () => ({ default: (await import("./rooms/instruments/cabinet-room.tsx")).CabinetRoom }));
const MethodsRoom = lazy(async () => ({ default: (await import("./rooms/methods/methods-room.tsx")).MethodsRoom }));
const CalibrationRoom = lazy(async () => ({
  default: (await import("./rooms/calibration/calibration-room.tsx")).CalibrationRoom,
}));
const ExerciseRoom = lazy(async () => ({
  default: (await import("./rooms/calibration/exercise-room.tsx")).ExerciseRoom,
}));
const SettingsRoom = lazy(async () => ({ default: (await import("./rooms/settings/settings-room.tsx")).SettingsRoom }));
const AboutRoom = lazy(async () => ({ default: (await import("./rooms/settings/about-room.tsx")).AboutRoom }));

const LightBoxRoom = lazy(async () => ({
  default: (await import("./rooms/light-box/light-box-room.tsx")).LightBoxRoom,
}));

const TwoViewRoom = lazy(async () => ({
  default: (await import("./rooms/light-box/two-view/two-view-room.tsx")).TwoViewRoom,
}));

const CompareRoom = lazy(async () => ({
  default: (await import("./rooms/light-box/compare/compare-room.tsx")).CompareRoom,
}));

/** The whole window: the room that is asked for, and the emergency page that can lie above any of them. */
export const App = () => (
  <>
    <Window />
    <EmergencyRoom />
  </>
);

/** The first question if nobody has answered it, otherwise the room that the address names. */
function Window() {
  const settings = useSettings();
  const [sheet, setSheet] = useState(false);
  useShortcut("?", "Everywhere", "This sheet", () => setSheet(true));
  if (settings.error)
    return (
      <>
        <Corner />
        <SayRefusal of={settings.error} retry={() => void settings.refetch()} whole />
      </>
    );
  if (settings.data === undefined) return <Opening />;
  if (settings.data.who === "")
    return (
      <RoomBoundary>
        <Corner />
        <FirstStart settings={settings.data} />
      </RoomBoundary>
    );
  return (
    <>
      <RoomBoundary>
        <Suspense fallback={<Opening />}>
          <Rooms />
        </Suspense>
      </RoomBoundary>
      {sheet && <ShortcutSheet close={() => setSheet(false)} />}
    </>
  );
}

/** The way to the emergency page where no head is. */
const Corner = () => (
  <header className="emergency-corner">
    <EmergencyLink />
  </header>
);

function Rooms() {
  return (
    <Switch>
      <Route path="/">
        <LogbookRoom />
      </Route>
      <Route path="/case/:caseId/light-box/two-view/:canal?">
        {({ caseId, canal }) => <TwoViewRoom key={caseId} caseId={caseId} {...(canal ? { canal } : {})} />}
      </Route>
      <Route path="/case/:caseId/light-box/compare/:comparison?">
        {({ caseId, comparison }) => (
          <CompareRoom key={caseId} caseId={caseId} {...(comparison ? { comparisonId: comparison } : {})} />
        )}
      </Route>
      <Route path="/case/:caseId/light-box/:film?">
        {({ caseId, film }) => <LightBoxRoom key={caseId} caseId={caseId} {...(film ? { filmPartId: film } : {})} />}
      </Route>
      <Route path="/case/:caseId/documents">{({ caseId }) => <DocumentsRoom key={caseId} caseId={caseId} />}</Route>
      <Route path="/case/:caseId/:moment?">
        {({ caseId, moment }) => <CaseRoom key={caseId} caseId={caseId} moment={moment ?? ""} />}
      </Route>
      <Route path="/due">
        <DueRoom />
      </Route>
      <Route path="/instruments/:item?">{({ item }) => <CabinetRoom item={item ?? ""} />}</Route>
      <Route path="/methods/:topic?">{({ topic }) => <MethodsRoom topic={topic ?? ""} />}</Route>
      <Route path="/calibration">
        <CalibrationRoom />
      </Route>
      <Route path="/calibration/clicks/:id/:mark?">
        {({ id, mark }) => <ExerciseRoom key={id} id={id} isMarking={mark === "mark"} />}
      </Route>
      <Route path="/settings">
        <SettingsRoom />
      </Route>
      <Route path="/about">
        <AboutRoom />
      </Route>
      <Route>
        <NothingHere />
      </Route>
    </Switch>
  );
}
