import { describe, expect, it } from "vitest";
import { boneLike, filmOf } from "../../test/bone-like-film.ts";
import { compareFilmsTopic } from "../core/radiograph/compare-films-topic.ts";
import { answer } from "../core/topic.ts";
import { comparedFilms } from "./compared-films.ts";

const [columns, rows] = [420, 320];
const bone = boneLike(11);
const film = (making: object = {}, of = bone) => {
  const { grey } = filmOf(of, { columns, rows, noise: 0.01, ...making });
  return { columns, rows, grey: Float32Array.from(grey) };
};
const shifted = [1, 0, 7, 0, 1, -4, 0, 0, 1];
const landmarks = [
  [90, 70],
  [330, 80],
  [320, 250],
  [80, 240],
].map(([u = 0, v = 0]) => ({ before: [u, v], after: [u + 7, v - 4] }));
const input = { before: { hash: "a" }, after: { hash: "b" }, landmarks, sigmaPx: 1 };

describe("two films compared as an entry asks", () => {
  const films = {
    before: film({ seed: 1 }),
    after: film({ seed: 2, map: shifted, tone: (grey: number) => grey ** 1.2 }),
  };
  const made = comparedFilms(input, films);

  it("gives what the topic answers, without its picture, and says where that went", () => {
    const whole = answer(compareFilmsTopic, { ...input, ...films });
    const { notComputed, ...values } = whole;
    expect("output" in made.outcome && made.outcome.output).toMatchObject(values);
    expect(made.outcome).not.toHaveProperty("output.difference");
    expect(made.outcome).toMatchObject({
      output: { notComputed: [notComputed[0], { name: "difference", why: expect.stringContaining("made again") }] },
    });
  });

  it("lays the second film on the first with the first one's greys, and nothing where it does not reach", () => {
    const { laid } = made;
    const at = (column: number, row: number) => laid?.values[row * columns + column];
    expect(at(columns - 1, 160)).toBeNaN();
    expect(at(200, 1)).toBeNaN();
    let [off, count] = [0, 0];
    for (let row = 20; row < 300; row += 7)
      for (let column = 20; column < 400; column += 7) {
        off += Math.abs((at(column, row) ?? 0) - (films.before.grey[row * columns + column] ?? 0));
        count += 1;
      }
    // Two films of 1 % of noise each differ by 1.1 % on average: 0.01 sqrt(2) sqrt(2 / pi).
    expect(off / count).toBeLessThan(0.014);
  });

  it("gives a difference with less grain than the sum's own sigma", () => {
    const { difference, outcome } = made;
    const values = Array.from(difference?.values ?? []).filter(
      (_, at) => at % columns < columns - 10 && at > 10 * columns,
    );
    const sigma = Math.sqrt(values.reduce((sum, one) => sum + one * one, 0) / values.length);
    const told = "output" in outcome ? Number(Reflect.get(outcome.output as object, "differenceSigma")) : 0;
    expect(sigma).toBeLessThan(0.5 * told);
    expect(sigma).toBeGreaterThan(0.1 * told);
  });

  it("lays films that can't be compared as well, without a difference", () => {
    const other = comparedFilms(input, { before: films.before, after: film({ seed: 5 }, boneLike(77)) });
    expect(other.outcome).toMatchObject({ output: { comparable: false } });
    expect(other.difference).toBeUndefined();
    expect(other.laid?.values).toHaveLength(columns * rows);
  });

  it("gives the lines of a refusal: landmarks in line, films of one pixel", () => {
    const line = [10, 50, 90, 130].map((x) => ({ before: [x, x], after: [x, x] }));
    expect(comparedFilms({ ...input, landmarks: line }, films)).toEqual({
      outcome: { refused: [expect.stringContaining("nearly in line")] },
    });
    const one = { columns: 1, rows: 1, grey: new Float32Array(1) };
    expect(comparedFilms(input, { before: one, after: one }).outcome).toHaveProperty("refused");
  });
});
