import { useMemo, useRef, useState } from "react";
import { courseInSpace } from "../../../../figures/course-in-space.ts";
import { type Pose, poseWords, turnedPose } from "../../../../figures/seen-from.ts";
import type { CourseRead } from "../../../../ledger/course-in-space.ts";
import { standOf } from "../../../lightbox/two-view/stand-of-films.ts";
import { Button } from "../../../parts/button.tsx";
import { FigureView } from "../../../parts/figure-view.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { innerSide } from "../../../words/two-view-words.ts";
import { useTwoView } from "./two-view-work.ts";

/** From where the drawing is first seen: a little of everything. */
const firstPose: Pose = { yawDeg: 38, pitchDeg: 16 };
/** Degrees for a pixel of a drag, and for a press of an arrow; three times that with Shift. */
const perPixel = 0.6;
const perPress = 5;

const poses: readonly { readonly says: string; readonly keys: string; readonly pose: Pose }[] = [
  { says: "front", keys: "v", pose: { yawDeg: 0, pitchDeg: 0 } },
  { says: "mesial", keys: "m", pose: { yawDeg: 90, pitchDeg: 0 } },
  { says: "apex", keys: "a", pose: { yawDeg: 0, pitchDeg: 90 } },
  { says: "aslant", keys: "s", pose: firstPose },
];

/** The canal in space, turned by drag or arrows. */
export function SpaceView({ course }: { readonly course: CourseRead }) {
  const { canal, films, place, tooth } = useTwoView();
  const [pose, setPose] = useState(firstPose);
  const stand = useMemo(() => (films[0] === undefined ? undefined : standOf(films[0])), [films]);
  const turn = useTurning(setPose, stand);
  const figure = useMemo(
    () =>
      courseInSpace({
        ...{ name: canal, course: course.course, spread: course.sigma, pose, place },
        ...(stand ?? { rightIs: "distal", apexIs: "down" }),
        films: course.anglesDeg.map((angleDeg, index) => ({
          ...{ name: films[index]?.name ?? `film ${index + 1}`, angleDeg, receptor: course.receptorRead },
        })),
        ...{ innerSide: innerSide(tooth), theme: "dark", widthPx: 400 },
      }),
    [canal, course, pose, place, stand, films, tooth],
  );
  return (
    <div className="space-view">
      <div
        className="space-view-drawing"
        role="application"
        aria-label={`Drawing of ${canal} in space, seen ${poseWords(pose)}`}
        aria-describedby="space-view-keys"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the drawing takes keys of its own, which its description names
        tabIndex={0}
        {...turn}
      >
        <FigureView figure={figure} />
      </div>
      <p className="quiet" id="space-view-keys">
        Seen {poseWords(pose)}; drag or arrow keys turn it. Pale: where single places lie, 95 %.
      </p>
      <div className="space-view-poses">
        {poses.map((one) => (
          <PoseButton key={one.says} {...one} isNow={one.pose === pose} take={() => setPose(one.pose)} />
        ))}
      </div>
    </div>
  );
}

interface PoseButtonOptions {
  readonly says: string;
  readonly keys: string;
  readonly isNow: boolean;
  readonly take: () => void;
}

function PoseButton({ says, keys, isNow, take }: PoseButtonOptions) {
  useShortcut(keys, "Two views", says === "aslant" ? "See the canal aslant" : `See the canal from the ${says}`, take);
  return (
    <Button weight="plain" hint={keys.toUpperCase()} aria-pressed={isNow} onClick={take}>
      {says}
    </Button>
  );
}

/** Drags and arrows turn what is nearest to the eye the way the hand goes. */
function useTurning(setPose: (next: (now: Pose) => Pose) => void, stand: ReturnType<typeof standOf> | undefined) {
  const held = useRef<{ x: number; y: number } | undefined>(undefined);
  const [right, down] = [stand?.rightIs === "mesial" ? -1 : 1, stand?.apexIs === "up" ? -1 : 1];
  const turn = (across: number, along: number) =>
    setPose((now) => turnedPose(now, { yawDeg: across * right, pitchDeg: -along * down }));
  const letGo = () => {
    held.current = undefined;
  };
  return {
    onPointerDown: (event: React.PointerEvent<HTMLDivElement>) => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      held.current = { x: event.clientX, y: event.clientY };
    },
    onPointerMove: (event: React.PointerEvent<HTMLDivElement>) => {
      if (held.current === undefined) return;
      turn((event.clientX - held.current.x) * perPixel, (event.clientY - held.current.y) * perPixel);
      held.current = { x: event.clientX, y: event.clientY };
    },
    onPointerUp: letGo,
    onPointerCancel: letGo,
    onKeyDown: (event: React.KeyboardEvent<HTMLDivElement>) => {
      const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
      if (way === undefined) return;
      event.preventDefault();
      const size = perPress * (event.shiftKey ? 3 : 1);
      turn((way[0] ?? 0) * size, (way[1] ?? 0) * size);
    },
  };
}
