import "./look-panel.css";
import { useEffect, useId, useRef } from "react";
import type { FilmLook } from "../../../imaging/looked-at.ts";
import { Button } from "../../parts/button.tsx";
import { type LookSetting, lookSettings, onStep, plainLook, settingInWords } from "../kernels/film-look.ts";
import type { LightBox } from "./light-box.ts";

/** A hand that rests this long on a slider has chosen. */
const restMilliseconds = 700;

/** What is done to the film for the eye: gamma, local contrast, sharpening. */
export function LookPanel({ box, close }: { readonly box: LightBox; readonly close: () => void }) {
  const first = useRef<HTMLInputElement>(null);
  const choosing = useChoosing(box);
  useEffect(() => first.current?.focus(), []);
  const leave = () => {
    close();
    box.pane.element.current?.focus({ preventScroll: true });
  };
  return (
    <section
      className="look-panel"
      aria-label="Look"
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.stopPropagation();
        leave();
      }}
    >
      <header>
        <h2>Look</h2>
        <Button weight="bare" hint="L" onClick={leave}>
          Close
        </Button>
      </header>
      {lookSettings.map((setting, index) => (
        <Slider key={setting.name} look={box.look} {...{ setting, choosing }} input={index === 0 ? first : undefined} />
      ))}
      <Button hint="C" onClick={() => asRecorded(box)}>
        As recorded by the sensor
      </Button>
      <p>
        For the eye alone: courses are followed and values read on the pixels as recorded. Documents show the film under
        its window, without these.
      </p>
      <Cautions look={box.look} />
    </section>
  );
}

/** Shows a film as its file gives it, with nothing done to it for the eye. */
export function asRecorded({ pixels, show }: Pick<LightBox, "pixels" | "show">): void {
  if (pixels.is === "open") show({ window: pixels.film.window, look: plainLook }, "Shown as recorded by the sensor");
}

/** What a look can make of a film that is not there. */
const Cautions = ({ look }: { look: FilmLook }) => (
  <>
    {look.sharpening.amount > 0 && (
      <p className="look-caution">Sharpening draws rims: a dark line beside a filling can be its work.</p>
    )}
    {look.localContrast > 0 && (
      <p className="look-caution">Local contrast shifts grey from place to place: densities can't be compared in it.</p>
    )}
  </>
);

interface Choosing {
  readonly try: (setting: LookSetting, value: number) => void;
  readonly settle: () => void;
}

interface SliderOptions {
  readonly look: FilmLook;
  readonly setting: LookSetting;
  readonly choosing: Choosing;
  readonly input: React.RefObject<HTMLInputElement | null> | undefined;
}

function Slider({ look, setting, choosing, input }: SliderOptions) {
  const id = useId();
  const { name, least, most, step } = setting;
  return (
    <div className="look-setting">
      <label htmlFor={id}>{name}</label>
      <output htmlFor={id}>{setting.inWords(look)}</output>
      <input
        ref={input}
        id={id}
        type="range"
        {...{ min: least, max: most, step, value: setting.of(look) }}
        aria-valuetext={setting.inWords(look)}
        onChange={({ target }) => choosing.try(setting, target.valueAsNumber)}
        onPointerUp={choosing.settle}
        onBlur={choosing.settle}
      />
    </div>
  );
}

/** The film follows the slider; what it comes to rest on is one change. */
function useChoosing(box: LightBox): Choosing {
  const chosen = useRef<{ look: FilmLook; words: string; timer: number } | undefined>(undefined);
  const latest = useRef(box);
  latest.current = box;
  const settle = () => {
    const now = chosen.current;
    chosen.current = undefined;
    if (now === undefined) return;
    clearTimeout(now.timer);
    latest.current.show({ look: now.look }, now.words);
  };
  const settleLater = useRef(settle);
  settleLater.current = settle;
  // A panel that is closed, or a film that is left, in the middle of it has been chosen as well.
  useEffect(() => () => settleLater.current(), []);
  return {
    try: (setting, value) => {
      clearTimeout(chosen.current?.timer);
      const look = setting.set(chosen.current?.look ?? latest.current.look, onStep(setting, value));
      const timer = window.setTimeout(() => settleLater.current(), restMilliseconds);
      chosen.current = { look, words: settingInWords(setting, look), timer };
      latest.current.tryLook(look);
    },
    settle,
  };
}
