import { EmptyState } from "@/components/ui/empty-state";
import { Section } from "@/components/ui/section";
import styles from "./season.module.css";

/** Who stands for an athlete. */
export interface Contact {
  personId: string;
  name: string;
  email: string | null;
  phone: string | null;
}

/** Whom staff call about an athlete, and whether video may be sent. */
export function Contacts({ contacts, hasConsent }: { contacts: readonly Contact[]; hasConsent: boolean }) {
  return (
    <Section title="Family">
      {contacts.length > 0 ? (
        <ul className={styles.list}>
          {contacts.map(({ personId, name, email, phone }) => (
            <li key={personId}>
              <span>
                {name}
                <span className={styles.quiet}>
                  {phone ? <a href={`tel:${phone.replaceAll(/[^+\d]/g, "")}`}>{phone}</a> : null}
                  {phone && email ? ", " : null}
                  {email ? <a href={`mailto:${email}`}>{email}</a> : null}
                </span>
              </span>
            </li>
          ))}
        </ul>
      ) : (
        <EmptyState title="No guardian is on record">An athlete of 18 acts for themselves.</EmptyState>
      )}
      <p className={styles.quiet}>
        {hasConsent
          ? "Consent to video is given."
          : "There is no consent to video: no clip can be sent or opened."}
      </p>
    </Section>
  );
}
