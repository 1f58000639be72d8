import { KeyHint } from "../../parts/key-hint.tsx";
import { useShortcut } from "../../parts/shortcuts.ts";
import { reoriented } from "../kernels/film-placement.ts";
import { type ToolName, tools } from "../tools/tools.ts";
import type { LightBox } from "./light-box.ts";
import { ToolIcon } from "./tool-icons.tsx";

const room = "Light box";

/** The tools at the film's side, each with its key; below them what turns the view. */
export function ToolBar({ box }: { readonly box: LightBox }) {
  const { show, window: grey, orientation } = box;
  return (
    <nav className="tool-bar" aria-label="Tools">
      {tools.map((tool) => (
        <ToolButton key={tool.tool} box={box} tool={tool.tool} keys={tool.key} says={tool.says} />
      ))}
      <hr />
      <ViewButton
        does={{ icon: "invert", keys: "i", word: "negative", says: "Exchange black and white" }}
        act={() => show({ window: { ...grey, invert: !grey.invert } }, "Black and white exchanged")}
      />
      <ViewButton
        does={{ icon: "turn", keys: "r", word: "turn", says: "Turn the film by a quarter" }}
        act={() => show({ orientation: reoriented(orientation, "turned") }, "Turned")}
      />
      <ViewButton
        does={{ icon: "mirror", keys: "m", word: "mirror", says: "Mirror the film" }}
        act={() => show({ orientation: reoriented(orientation, "mirrored") }, "Mirrored")}
      />
      <ViewButton
        does={{ icon: "fit", keys: "0", word: "whole", says: "Show the whole film" }}
        act={() => box.placing?.fit()}
      />
    </nav>
  );
}

const words: Readonly<Record<ToolName, string>> = {
  move: "move",
  window: "window",
  known: "known",
  trace: "trace",
  distance: "distance",
  spot: "spot",
  outline: "outline",
  fragment: "fragment",
  fillingEnd: "filling",
  apex: "apex",
  level: "level",
  wall: "wall",
  crownRoot: "ratio",
};

interface ToolButtonOptions {
  readonly box: LightBox;
  readonly tool: ToolName;
  readonly keys: string;
  readonly says: string;
}

function ToolButton({ box, tool, keys, says }: ToolButtonOptions) {
  const take = () => {
    box.take(tool);
    box.pane.element.current?.focus({ preventScroll: true });
  };
  useShortcut(keys, room, says, take);
  const inHand = box.tool.state.tool === tool;
  return (
    <button type="button" className="tool" aria-pressed={inHand} aria-keyshortcuts={keys} title={says} onClick={take}>
      <ToolIcon of={tool} />
      <span>
        {words[tool]} <KeyHint keys={keys.toUpperCase()} />
      </span>
    </button>
  );
}

interface ViewButtonOptions {
  readonly does: {
    readonly icon: "invert" | "turn" | "mirror" | "fit";
    readonly keys: string;
    readonly word: string;
    readonly says: string;
  };
  readonly act: () => void;
}

function ViewButton({ does: { icon, keys, word, says }, act }: ViewButtonOptions) {
  useShortcut(keys, room, says, act);
  return (
    <button type="button" className="tool" aria-keyshortcuts={keys} title={says} onClick={act}>
      <ToolIcon of={icon} />
      <span>
        {word} <KeyHint keys={keys.toUpperCase()} />
      </span>
    </button>
  );
}
