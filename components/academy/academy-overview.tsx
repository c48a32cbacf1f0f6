import Link from "next/link";
import { Notice } from "@/components/ui/notice";
import { PageHeading } from "@/components/ui/page-heading";
import type { Answers } from "@/components/wire/answers";
import { promiseInWords } from "@/server/domain/people/academy-settings";
import type { SettingUp } from "@/server/domain/people/still-to-set";
import styles from "./academy-overview.module.css";
import { AcademyPage } from "./academy-page";

type Overview = Answers["academy"]["overview"];

const STEPS: Record<SettingUp, { text: string; href: string }> = {
  site_hours: {
    text: "Say when each site is open: promises are counted in those hours.",
    href: "/academy/sites",
  },
  lanes: { text: "Add the lanes that can be booked.", href: "/academy/sites" },
  coaches: { text: "Add the coaches.", href: "/academy/people" },
  coach_hours: { text: "Say when each coach works.", href: "/academy/hours" },
  rates: { text: "Set prices: a session without one cannot be logged.", href: "/academy/rates" },
  athletes: { text: "Add the athletes and their guardians.", href: "/academy/people" },
};

interface Place {
  href: string;
  label: string;
  now: string;
}

function placesOf({ settings, counts, checkpoints }: Overview): Place[] {
  return [
    {
      href: "/academy/people",
      label: "People",
      now: `${counted(counts.athletes, "athlete")}, ${counted(counts.coaches, "coach", "coaches")}, their guardians and admins`,
    },
    {
      href: "/academy/sites",
      label: "Sites and lanes",
      now: `${counted(counts.sites, "site")}, ${counted(counts.lanes, "lane")}, opening hours and closed days`,
    },
    { href: "/academy/hours", label: "Coaches’ hours", now: "Who works where and when, and who is away" },
    {
      href: "/academy/checkpoints",
      label: "Checkpoints",
      now: `${counted(checkpoints, "thing")} to look at in a delivery, with cues and drills`,
    },
    {
      href: "/academy/templates",
      label: "Usual reviews",
      now: "What is usually said of a clip, by age, ready to be put on a slip",
    },
    {
      href: "/academy/agreement",
      label: "Coach agreement",
      now: "Frames that coaches judge or measure alone, and how far they see the same",
    },
    {
      href: "/academy/books",
      label: "Rule books",
      now: "The limits that arms go by, with their sources, and which mound work counts",
    },
    {
      href: "/academy/holding",
      label: "Holding",
      now: "How long corrections take to hold, by checkpoint and by coach, and beside which drills",
    },
    {
      href: "/academy/settings",
      label: "Settings",
      now: `Reviews promised within ${promiseInWords(settings)}; at most ${settings.maxOpenCorrections} corrections open at a time`,
    },
  ];
}

function placesOfAdmins({ counts }: Overview): Place[] {
  return [
    {
      href: "/academy/rates",
      label: "Prices",
      now: `${counted(counts.pricedKinds, "kind")} of work priced today`,
    },
    { href: "/academy/notices", label: "Notices", now: "What was sent to whom, and what failed" },
    { href: "/academy/record", label: "Record", now: "Who changed what, in a chain that shows tampering" },
  ];
}

/** What the academy has set, where to change it, and what is still missing before it can work. */
export function AcademyOverview({ overview, isAdmin }: { overview: Overview; isAdmin: boolean }) {
  const places = [...placesOf(overview), ...(isAdmin ? placesOfAdmins(overview) : [])];
  return (
    <AcademyPage>
      <PageHeading
        question="How does this academy work?"
        place={overview.settings.name}
        detail={isAdmin ? undefined : "Admins change these; you can read them."}
      />
      {overview.missing.length > 0 ? (
        <Notice isStatic kind="attention" word="Still to set" className={styles.missing}>
          <ol className={styles.steps}>
            {overview.missing.map((step) => (
              <li key={step}>
                <Link href={STEPS[step].href}>{STEPS[step].text}</Link>
              </li>
            ))}
          </ol>
        </Notice>
      ) : null}
      <ul className={styles.places}>
        {places.map((place) => (
          <li key={place.href}>
            <Link href={place.href} className={styles.place}>
              <span className={styles.label}>{place.label}</span>
              <span className={styles.now}>{place.now}</span>
            </Link>
          </li>
        ))}
      </ul>
    </AcademyPage>
  );
}

function counted(number: number, noun: string, nouns = `${noun}s`): string {
  return `${number} ${number === 1 ? noun : nouns}`;
}
