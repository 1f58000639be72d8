/** How far a pointer is along a curve of a mounted drawing from left to right, 0 to 1; undefined where there is none. */
export function shareAcross(drawing: Element, part: string, clientX: number): number | undefined {
  const box = drawing.querySelector(`[data-part="${part}"]`)?.getBoundingClientRect();
  if (box === undefined || box.width === 0) return undefined;
  return Math.min(1, Math.max(0, (clientX - box.left) / box.width));
}

const steps = 120;

/** Which share of the way along a path of a mounted drawing is nearest to a pointer. */
export function shareAlongPath(drawing: Element, part: string, at: { readonly x: number; readonly y: number }) {
  const path = drawing.querySelector(`path[data-part="${part}"]`);
  if (!(path instanceof SVGPathElement)) return undefined;
  const toScreen = path.getScreenCTM();
  const length = path.getTotalLength();
  if (toScreen === null || length === 0) return undefined;
  const off = Array.from({ length: steps + 1 }, (_, step) => {
    const { x, y } = path.getPointAtLength((length * step) / steps).matrixTransform(toScreen);
    return Math.hypot(x - at.x, y - at.y);
  });
  return off.indexOf(Math.min(...off)) / steps;
}
