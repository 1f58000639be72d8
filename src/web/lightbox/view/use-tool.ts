import { useCallback, useRef, useState } from "react";
import type { Polarity, ToolEffect, ToolEvent, ToolWorld } from "../tools/tool-step.ts";
import { pathsWanted, stepTool, type ToolName, type ToolState, toolAtRest } from "../tools/tools.ts";
import type { WantedPaths } from "../workers/film-ridge.ts";

/** The tool in the hand. */
export interface ToolUse {
  readonly state: ToolState;
  readonly take: (tool: ToolName, polarity: Polarity) => void;
  readonly send: (event: ToolEvent) => void;
}

/** Runs the tool in the hand: each event one step, then what the step asks for. */
export function useTool(
  world: () => ToolWorld,
  carryOut: (effect: ToolEffect) => void,
  want: (wanted: readonly WantedPaths[]) => void,
): ToolUse {
  const [state, setState] = useState<ToolState>(() => toolAtRest("move", "dark"));
  const current = useRef(state);
  const outside = useRef({ world, carryOut, want });
  outside.current = { world, carryOut, want };
  const become = useCallback((next: ToolState) => {
    if (next === current.current) return;
    current.current = next;
    setState(next);
    outside.current.want(pathsWanted(next));
  }, []);
  const send = useCallback(
    (event: ToolEvent) => {
      const next = stepTool(current.current, event, outside.current.world());
      become(next.state);
      for (const effect of next.effects) outside.current.carryOut(effect);
    },
    [become],
  );
  const take = useCallback((tool: ToolName, polarity: Polarity) => become(toolAtRest(tool, polarity)), [become]);
  return { state, take, send };
}
