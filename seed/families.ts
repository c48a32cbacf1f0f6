import type { CastAthlete, CastFamily, CoachKey, SiteKey } from "./people";

type Extras = Pick<CastAthlete, "part" | "mailbox" | "years">;

const right = (given: string, age: number, coach: CoachKey, site: SiteKey, extras: Extras = {}) =>
  ({ given, age, hand: "right", coach, site, ...extras }) satisfies CastAthlete;
const left = (given: string, age: number, coach: CoachKey, site: SiteKey, extras: Extras = {}) =>
  ({ given, age, hand: "left", coach, site, ...extras }) satisfies CastAthlete;
const family = (name: string, adults: readonly string[], ...athletes: CastAthlete[]): CastFamily => ({
  name,
  adults: adults.map((given) => ({ given })),
  athletes,
});

/** The families of the demo academy: 40 athletes of 8 to 20, twelve of them left-handed. All invented. */
export const FAMILIES: readonly CastFamily[] = [
  {
    name: "Hallowell",
    adults: [{ given: "Joan", mailbox: "guardian" }, { given: "Peter" }],
    athletes: [
      right("Theo", 12, "tamar", "mill", { part: "sent" }),
      left("Mara", 15, "tamar", "mill", { part: "settled_lately" }),
    ],
  },
  family(
    "Sable",
    ["Lorna"],
    right("Wes", 16, "tamar", "mill", { part: "settled_lately", mailbox: "athlete" }),
  ),
  {
    name: "Achterberg",
    adults: [{ given: "Ruben", staff: "ruben" }, { given: "Annika" }],
    athletes: [right("Lotte", 13, "tamar", "mill", { part: "answered" })],
  },
  family("Quill", ["Sam", "Odette"], right("Jonah", 14, "tamar", "mill", { part: "received_due_today" })),
  family(
    "Marchetti-Boone",
    ["Gia"],
    left("Rocco", 17, "tamar", "mill", { part: "answered_due_today" }),
    right("Pia", 11, "tamar", "mill"),
  ),
  family("Tennant", ["Ewan", "Rosalie"], right("Callum", 15, "tamar", "mill", { part: "taken_draft" })),
  family("Obafemi", ["Yetunde"], right("Tobi", 13, "tamar", "mill", { part: "received_late" })),
  family("Lindqvist-Shaw", ["Maja"], left("Nils", 10, "tamar", "mill", { part: "received_now" })),
  family("Prewitt", ["Carla", "Don"], right("Hank", 18, "tamar", "mill", { part: "sent" })),
  family("Vance-Ortega", ["Luz"], right("Mateo", 12, "tamar", "mill", { part: "late_game" })),
  family("Ashgrove", ["Nell"], right("Ivy", 16, "tamar", "mill", { part: "pain_stopped" })),
  family("Delacroix-Hume", ["Simone"], left("Bastien", 14, "tamar", "mill", { part: "silent" })),
  family(
    "Fenwick-Rao",
    ["Anil", "Beth"],
    right("Kiran", 9, "ines", "mill"),
    right("Asha", 13, "ines", "mill", { part: "taken" }),
  ),
  family("Garrity", ["Moira"], right("Declan", 17, "ines", "mill", { part: "sent" })),
  family("Holloway-Park", ["Jin"], left("Eli", 12, "ines", "mill", { part: "retake" })),
  family("Iverson-Pell", ["Dana"], right("Cole", 8, "ines", "mill")),
  family("Jessup", ["Ray", "Tina"], right("Bo", 10, "ines", "mill"), left("Cass", 14, "ines", "mill")),
  family("Kestrel", ["Wynn"], right("Arlo", 19, "ines", "mill", { years: 3 })),
  family("Lomax", ["Greta"], right("Finn", 11, "ines", "mill", { part: "lapsed" })),
  family("Mbeki-Stone", ["Thandi"], right("Sipho", 15, "ines", "mill", { part: "withdrawn" })),
  family("Norcross", ["Hal"], left("Reed", 9, "dell", "mill")),
  family("Oakhurst", ["Pam", "Vic"], right("Drew", 16, "dell", "mill", { part: "sent" })),
  family("Pemberly", ["Una"], right("Gus", 13, "dell", "mill")),
  family("Quintero-Vale", ["Alma"], right("Rafa", 17, "dell", "mill")),
  family("Rosewater", ["Ned"], left("Toby", 20, "dell", "mill")),
  family("Stallard", ["Kit"], right("Marlon", 18, "dell", "mill", { part: "pain_cleared" })),
  family("Tillery", ["Jo", "Abe"], left("Emmett", 11, "ruben", "yard"), right("Silas", 8, "ruben", "yard")),
  family("Underhill", ["Faye"], left("Otis", 14, "ruben", "yard")),
  family("Varga-Lunn", ["Ilona"], right("Zoli", 12, "ruben", "yard", { part: "received_due_today" })),
  family("Wetherby", ["Cleo"], right("Jasper", 15, "ruben", "yard")),
  family("Yarrow", ["Bram", "Lise"], right("Milo", 9, "ruben", "yard"), left("Wren", 16, "ruben", "yard")),
  family("Zeller-Cobb", ["Mina"], right("Abel", 10, "ruben", "yard")),
  family("Crane-Adeyo", ["Ife"], right("Dayo", 18, "ruben", "yard")),
  family("Dunmore", ["Elsie"], left("Rory", 19, "ruben", "yard", { part: "no_consent" })),
];
