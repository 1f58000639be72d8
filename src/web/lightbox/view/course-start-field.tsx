import { useId } from "react";
import { type CourseStart, courseBegins, startOfCourse, startWords } from "../kernels/course-start.ts";
import type { Mark } from "../kernels/mark-shape.ts";
import type { LightBox } from "./light-box.ts";

/** Says where a course begins, and lets the person say otherwise. */
export function CourseStartField({ box, mark }: { readonly box: LightBox; readonly mark: Mark }) {
  const id = useId();
  const { body } = mark;
  if (body.shape !== "trace") return null;
  const start = startOfCourse(body, box.film);
  const begin = (from: CourseStart) => box.record(courseBegins(mark, body, from, box));
  return (
    <p className="course-start">
      <label htmlFor={id}>It begins at</label>
      <select
        id={id}
        className="field-select"
        value={start}
        onChange={({ target }) => begin(target.value === "referencePoint" ? "referencePoint" : "orifice")}
      >
        {Object.entries(startWords).map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </p>
  );
}
