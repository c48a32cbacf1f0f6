"use client";
import Link from "next/link";
import { Button } from "@/components/ui/button";
import { DateField } from "@/components/ui/date-field";
import { Disclosure } from "@/components/ui/disclosure";
import { Form, FormActions, FormRow } from "@/components/ui/form";
import { type SeasonSpan, spanInWords } from "@/server/domain/season-reports/season-span";
import styles from "./report-tools.module.css";

/** Which season is told of: those there are, or any days up to a year. */
export function SpanChoice({ spans, shown }: { spans: readonly SeasonSpan[]; shown: SeasonSpan }) {
  return (
    <nav aria-label="Which season" data-print="no" className={styles.choice}>
      <ul className={styles.spans}>
        {spans.map((span) => (
          <li key={`${span.fromOn} ${span.toOn}`}>
            <Link
              href={`?from=${span.fromOn}&to=${span.toOn}`}
              aria-current={span.fromOn === shown.fromOn && span.toOn === shown.toOn ? "page" : undefined}
            >
              {spanInWords(span)}
            </Link>
          </li>
        ))}
      </ul>
      <Disclosure summary="Other days">
        <Form method="get" action="" aria-label="Other days">
          <FormRow>
            <DateField name="from" label="First day" defaultValue={shown.fromOn} />
            <DateField name="to" label="Last day" defaultValue={shown.toOn} />
          </FormRow>
          <FormActions>
            <Button type="submit">Show these days</Button>
          </FormActions>
        </Form>
      </Disclosure>
    </nav>
  );
}
