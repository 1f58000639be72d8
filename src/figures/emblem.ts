import { cShapeAt } from "../core/tooth/canal-root.ts";
import { canalSequence, sequenceText } from "../core/tooth/canal-sequence.ts";
import { isAwaited, isOpenQuestion, stateWords } from "./canal-state.ts";
import { canalsOf, cShapeOf, type EmblemDrawing, type EmblemTooth, stateIn } from "./emblem-input.ts";
import { rootsDrawing } from "./emblem-roots.ts";
import { namedSection, sectionDrawing, sectionGroup } from "./emblem-section.ts";
import { orificeMark } from "./orifice-mark.ts";
import { type Figure, figureOf, group, numberText, type SvgNode } from "./svg-tree.ts";
import { labelBox, labelNode, type TextLabel, textWidth } from "./text-label.ts";
import { type ThemeName, themes } from "./theme.ts";
import { sideWords, toothOutline } from "./tooth-outline.ts";

/** Widest emblem that shows dots alone, and widest that does without the list of states. */
const widestMark = 71;
const widestCard = 519;

/**
 * The emblem of a case: the tooth's section and its roots, with every canal in its state.
 * Takes the tooth, its roots as the canals topic takes them, the state of each canal by name (one that is missing counts as
 * not found), the ground that it stands on and the width that it is shown at.
 * Gives dots alone below 72 px, section and roots below 520 px, and the states in words as well from there on; a simple
 * tooth keeps the scale of a rich one and may so come out narrower than asked.
 */
export function emblem(given: EmblemTooth & { readonly theme: ThemeName; readonly widthPx: number }): Figure {
  const drawing: EmblemDrawing = { ...given, theme: themes[given.theme] };
  if (given.widthPx <= widestMark) return markForm(drawing, given.widthPx);
  if (given.widthPx <= widestCard) return cardForm(drawing, given.widthPx);
  return fullForm(drawing, given.widthPx);
}

/** The section alone, its dots large against it. */
function markForm(drawing: EmblemDrawing, widthPx: number): Figure {
  const outline = toothOutline(drawing.tooth, cShapeOf(drawing) !== undefined);
  const scale = 21.6 / Math.max(outline.mesiodistalMm, outline.buccolingualMm);
  const orificeRadius = canalsOf(drawing).length > 4 ? 2.1 : 2.7;
  const section = sectionDrawing(drawing, { centre: { x: 12, y: 12 }, scale, orificeRadius, outlineWidth: 1.3 });
  return figureOf({ width: 24, height: 24 }, widthPx, alternativeOf(drawing), [sectionGroup(section.nodes)]);
}

/** Section above, roots below; names at the section only. Long names make the view wider. */
function cardForm(drawing: EmblemDrawing, widthPx: number): Figure {
  const words = { size: 14, quietSize: 13 };
  const looks = { scale: 14, orificeRadius: 8, outlineWidth: 1.6 };
  const measured = namedSection(drawing, { ...looks, centre: { x: 0, y: 92 } }, words);
  const middle = Math.max(120, 4 - measured.left, measured.right + 4);
  const section = namedSection(drawing, { ...looks, centre: { x: middle, y: 92 } }, words);
  const roots = rootsDrawing(drawing, { left: 0, orificeY: 0, length: 190 });
  const shrink = Math.min(0.56, (2 * middle - 20) / roots.width);
  const x = middle - (roots.width * shrink) / 2;
  const y = drawing.tooth.arch === "upper" ? 196 + 190 * shrink : 200 + 42 * shrink;
  const view = { width: 2 * middle, height: 200 + 236 * shrink };
  const transform = `translate(${numberText(x)} ${numberText(y)}) scale(${shrink.toFixed(4)})`;
  const placed = group({ transform }, [roots.nodes]);
  return figureOf(view, widthPx, alternativeOf(drawing), [sectionGroup(section.nodes), placed]);
}

const margin = 6;
/** A tooth that needs less than this keeps the scale of its neighbours and is shown narrower. */
const usualWidth = 800;

/** Section, roots and the list of states, side by side. */
function fullForm(drawing: EmblemDrawing, widthPx: number): Figure {
  const words = { size: 16, quietSize: 14.5 };
  const height = 316;
  const upper = drawing.tooth.arch === "upper";
  const measured = sectionAt(drawing, 0, words);
  const section = sectionAt(drawing, margin - measured.left, words);
  const rootsLeft = section.right + 44;
  const roots = rootsDrawing(drawing, { left: rootsLeft, orificeY: upper ? 214 : 100, length: 204, words });
  const list = stateList(drawing, rootsLeft + roots.width + 40, height);
  const view = { width: Math.ceil(list.right + margin), height };
  const contents = [sectionGroup(section.nodes), roots.nodes, group({ "data-part": "states" }, list.nodes)];
  const shownPx = Math.round(Math.min(1, view.width / usualWidth) * widthPx);
  return figureOf(view, shownPx, alternativeOf(drawing), contents);
}

function sectionAt(drawing: EmblemDrawing, x: number, words: { readonly size: number; readonly quietSize: number }) {
  const place = { centre: { x, y: 156 }, scale: 22, orificeRadius: 12, outlineWidth: 2 };
  return namedSection(drawing, place, words);
}

const longestState = 34;

/** One row for each canal: its mark, its name, its state in words. */
function stateList(drawing: EmblemDrawing, left: number, height: number) {
  const { theme } = drawing;
  const canals = canalsOf(drawing);
  const row = Math.min(34, (height - 40) / canals.length);
  const size = 15;
  const top = (height - row * canals.length) / 2;
  const nameWidth = Math.max(...canals.map((canal) => textWidth(canal, size, "semibold")));
  const labels = canals.flatMap((canal, at): TextLabel[] => {
    const state = stateIn(drawing, canal);
    const y = top + row * (at + 0.5) + size * 0.36;
    const fill = isOpenQuestion(state) ? theme.accent : theme.ink;
    return [
      { text: canal, x: left + 26, y, size, fill, weight: "semibold" },
      ...inLines(stateWords(state)).map((text, line, lines) => ({
        ...{ text, x: left + 26 + nameWidth + 14, size, fill: isAwaited(state) ? theme.quiet : fill },
        y: y + (line - (lines.length - 1) / 2) * size * 1.08,
      })),
    ];
  });
  const marks: SvgNode[] = canals.map((canal, at) =>
    orificeMark(stateIn(drawing, canal), { x: left + 8, y: top + row * (at + 0.5) }, 7.5, theme),
  );
  const right = Math.max(...labels.map((label) => labelBox(label).right));
  return { nodes: [...marks, ...labels.map(labelNode)], right };
}

/** A state in one line, or in two where it is long; a third is not given it. */
function inLines(text: string): readonly string[] {
  if (text.length <= longestState) return [text];
  const at = text.lastIndexOf(" ", longestState);
  const [first, rest] =
    at > 0 ? [text.slice(0, at), text.slice(at + 1)] : [text.slice(0, longestState), text.slice(longestState)];
  return [first, rest.length > longestState ? `${rest.slice(0, longestState - 1)}…` : rest];
}

/** The emblem in words: the tooth, what is where, and the state of every canal. */
function alternativeOf(drawing: EmblemDrawing): string {
  const { tooth, roots } = drawing;
  const { outer } = sideWords(tooth);
  const courses = roots.map((root) => `${root.name} ${sequenceText(canalSequence(root.levels))}`).join(", ");
  const states = canalsOf(drawing).map((canal) => `${canal} ${stateWords(stateIn(drawing, canal))}`);
  const counted = `${roots.length} ${roots.length === 1 ? "root" : "roots"}`;
  const c = cShapeOf(drawing);
  const forms = c?.root.levels.flatMap((level) => cShapeAt(level) ?? []) ?? [];
  const byLevel = forms.length > 1 ? `, from orifice to foramen ${forms.join(", ")}` : "";
  const shaped = c === undefined ? "" : ` The section is C-shaped (${c.form})${byLevel}.`;
  return `Tooth ${tooth.twoDigit}, ${tooth.name}. Section at the orifices, ${outer} side up, and ${counted} (${courses}).${shaped} Canals: ${states.join("; ")}.`;
}
