"use client";
import { RadioChoice } from "@/components/ui/radio-choice";

const YES_NO = [
  { value: "no", label: "No" },
  { value: "yes", label: "Yes" },
];

/** A question answered with yes or no; null while it is not answered. */
export function YesOrNo(props: {
  question: string;
  value: boolean | null;
  onChange: (isYes: boolean) => void;
}) {
  const { question, value, onChange } = props;
  const answer = value === null ? null : YES_NO[Number(value)]?.value;
  return (
    <RadioChoice
      label={question}
      options={YES_NO}
      value={answer ?? null}
      onChange={(chosen) => onChange(chosen === "yes")}
    />
  );
}
