import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { type Column, Table } from "@/components/ui/table";

interface Row {
  id: string;
  name: string;
  minutes: number;
}

const rows: Row[] = [
  { id: "a", name: "First", minutes: 12 },
  { id: "b", name: "Second", minutes: 20 },
];

const columns: Column<Row>[] = [
  { key: "name", heading: "Athlete", isRowHeading: true, cell: (row) => row.name },
  { key: "minutes", heading: "Minutes", align: "number", cell: (row) => row.minutes, total: 32 },
  { key: "act", heading: "Act", isHeadingHidden: true, cell: () => "more" },
];

const render = (more: Partial<Parameters<typeof Table<Row>>[0]> = {}) =>
  renderToStaticMarkup(
    <Table caption="Rounds owed" columns={columns} rows={rows} rowKey={(row) => row.id} {...more} />,
  );

describe("a table", () => {
  it("has a caption, column headings and a heading for each row", () => {
    const markup = render();
    expect(markup).toContain("Rounds owed</caption>");
    expect(markup.match(/<th role="columnheader" scope="col"/g)).toHaveLength(3);
    expect(markup.match(/<th role="rowheader" scope="row"/g)).toHaveLength(3);
  });

  it("spells its roles out, since a browser drops them when rows become stacks", () => {
    const markup = render();
    expect(markup).toContain('<table role="table"');
    expect(markup.match(/<tr role="row"/g)).toHaveLength(4);
    expect(markup.match(/<td role="cell"/g)).toHaveLength(6);
  });

  it("puts a column's name before each of its values for a phone, once, and not for those who hear it", () => {
    const body = render().split("<tbody")[1] ?? "";
    const labels = body.split("<tfoot")[0]?.match(/aria-hidden="true">Minutes</g);
    expect(labels).toHaveLength(rows.length);
    expect(body).not.toContain('aria-hidden="true">Act<');
  });

  it("sums up in its last line, named, only where a column has a sum and there are rows", () => {
    expect(render()).toMatch(/<tfoot.*In all<.*32</);
    expect(render({ rows: [] })).not.toContain("<tfoot");
    expect(render({ columns: columns.map(({ total, ...column }) => column) })).not.toContain("<tfoot");
  });

  it("marks the row in hand for eyes and ears, and only that one", () => {
    expect(render({ isCurrent: (row) => row.id === "b" }).match(/aria-current="true"/g)).toHaveLength(1);
    expect(render()).not.toContain("aria-current");
  });

  it("says what to do when it is empty, and says nothing of it otherwise", () => {
    expect(render({ rows: [], empty: "Nothing is owed" })).toContain("Nothing is owed");
    expect(render({ empty: "Nothing is owed" })).not.toContain("Nothing is owed");
  });
});
