import { painLikeWords, swellingAtWords } from "../../../../record/words/finding-words.ts";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { TicksField } from "../../../parts/fields/tick-field.tsx";
import { FindingsSay, UrgentHere } from "../diagnosis/findings-say.tsx";
import { Answers } from "../findings/answers.tsx";
import { ExistingPart } from "../findings/existing-part.tsx";
import { ProtocolPart } from "../findings/protocol-part.tsx";
import { filmQuestions, historyQuestions, seenQuestions, urgentQuestions } from "../findings/questions.ts";
import { TestSheet } from "../findings/test-sheet.tsx";
import { TestStrength } from "../findings/test-strength.tsx";
import { TestsHeading } from "../findings/tests-heading.tsx";
import { useNextOpen } from "../findings/use-next-open.ts";
import { namesInWords, readNames } from "./levels.ts";
import { TypedCell } from "./typed-cell.tsx";

/** One examination: what can't wait, tests on the tooth and its controls, what was asked, what was seen, what the film shows. */
export function FindingsForm() {
  useNextOpen();
  return (
    <>
      <div className="fields">
        <DayField at="takenOn" label="Examined on" />
      </div>
      <UrgentHere />
      <Answers title="Signs that can't wait" questions={urgentQuestions}>
        <NumberField at="seen.temperatureC" label="Temperature" unit="°C" />
        <TicksField at="seen.swellingAt" label="Swelling, where" words={swellingAtWords} />
      </Answers>
      <section className="form-part">
        <TestsHeading />
        <TestSheet />
      </section>
      <Answers title="Asked" questions={historyQuestions}>
        <NumberField at="history.coldLingersSeconds" label="Pain to cold stays, as told" unit="s" />
        <NumberField at="history.heatLingersSeconds" label="Pain to heat stays, as told" unit="s" />
        <DayField at="history.traumaOn" label="Trauma on" optional />
        <TicksField at="history.painLike" label="Behaves like pain of" words={painLikeWords} />
      </Answers>
      <Answers title="Seen" questions={seenQuestions}>
        <TextField at="seen.tracedTo" label="Sinus tract traced to tooth" optional />
        <NumberField at="seen.mouthOpeningMm" label="Mouth opens" unit="mm" />
        <NumberField at="seen.rotationDeg" label="Tooth turned" unit="°" />
        <NumberField at="seen.tiltDeg" label="Tooth tilted" unit="°" />
        <NumberField at="seen.ferruleHeightMm" label="Sound wall above the bone, height" unit="mm" />
        <NumberField at="seen.ferruleWidthMm" label="Sound wall, width" unit="mm" />
        <TextField at="seen.restoration" label="Restoration" prose />
      </Answers>
      <Answers title="On the film" questions={filmQuestions}>
        <NumberField at="onFilm.lucencyMm" label="Radiolucency, widest" unit="mm" />
        <TypedCell
          at="onFilm.lucencyAtRoots"
          label="Radiolucency at roots, as MB DB"
          inWords={namesInWords}
          read={readNames}
          bare={false}
        />
        <NumberField at="onFilm.earlierFillingEndMm" label="Earlier filling's end, short of the apex" unit="mm" />
      </Answers>
      <ExistingPart />
      <ProtocolPart />
      <FindingsSay />
      <TestStrength />
      <TextField at="note" label="Note" prose />
    </>
  );
}
