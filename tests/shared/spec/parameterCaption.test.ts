import { catalog } from "../../../functions/index";
import { NAME_ENDINGS, UNIT_OF_NAME_ENDING } from "../../../shared/kinds/kind";
import { parameterCaption } from "../../../shared/spec/parameterCaption";
import type { Parameter } from "../../../shared/spec/spec";

const parameters = [
  ...new Map<string, Parameter<unknown>>(
    catalog.flatMap((spec) => spec.parameters.map((parameter) => [parameter.name, parameter] as const)),
  ).values(),
];

const captionOf = (name: string): string => {
  const parameter = parameters.find((each) => each.name === name);
  if (!parameter) throw new Error(`no function takes ${name}`);
  return parameterCaption(parameter);
};

describe("the caption of a parameter", () => {
  it.each([
    ["slopeLengthFt", "Slope length (ft)"],
    ["exposureIn", "Exposure (in)"],
    ["lengthsFt", "Lengths (ft)"],
    ["temperatureChangeF", "Temperature change (°F)"],
    ["angleDegrees", "Angle (degrees)"],
    ["planAreaSqFt", "Plan area (sq ft)"],
    ["otherPitch", "Other pitch"],
    ["panel", "Panel"],
  ])("%s is captioned %s", (name, caption) => {
    expect(captionOf(name)).toBe(caption);
  });

  it.each(parameters.map((parameter) => [parameter.name, parameter] as const))(
    "%s has a plain caption, with its unit in parentheses",
    (name, parameter) => {
      const caption = parameterCaption(parameter);
      const ending = NAME_ENDINGS.find((each) => name.endsWith(each));
      const unit = ending ? ` (${UNIT_OF_NAME_ENDING[ending]})` : "";
      expect(caption.endsWith(unit)).toBe(true);
      expect(caption.slice(0, caption.length - unit.length)).toMatch(/^[A-Z][a-z]*(?: [a-z]+)*$/);
    },
  );

  it("differs between the parameters of one function", () => {
    for (const spec of catalog) {
      const captions = spec.parameters.map(parameterCaption);
      expect(new Set(captions).size).toBe(captions.length);
    }
  });
});
