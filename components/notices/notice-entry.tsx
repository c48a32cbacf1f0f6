import { Disclosure } from "@/components/ui/disclosure";
import { TimeText } from "@/components/ui/time-text";
import type { Answers } from "@/components/wire/answers";
import { fullName } from "@/server/domain/people/person";
import { momentInWords } from "@/server/domain/time/words";
import { STATE_WORDS } from "./notice-words";
import styles from "./outbox.module.css";

/** One notice: to whom, of what, where it stands; its text behind it. */
export function NoticeEntry({
  notice,
  zone,
}: {
  notice: Answers["notices"]["list"]["rows"][number];
  zone: string;
}) {
  const to = fullName({ givenName: notice.toGivenName, familyName: notice.toFamilyName });
  return (
    <li className={styles.entry}>
      <Disclosure
        summary={
          <div className={styles.summary}>
            <span className={styles.subject}>{notice.subject}</span>
            <span className={styles.to}>to {to}</span>
            <TimeText dateTime={notice.createdAtMs}>
              {momentInWords(notice.createdAtMs, zone, { withYear: true })}
            </TimeText>
            <span className={notice.state === "failed" ? styles.failed : styles.stands}>
              {STATE_WORDS[notice.state]}
            </span>
          </div>
        }
      >
        <div className={styles.body}>
          <p className={styles.text}>{notice.body}</p>
          {notice.sentAtMs ? <small>Sent {momentInWords(notice.sentAtMs, zone)}.</small> : null}
          {notice.lastError ? <small>The mail server said: {notice.lastError}</small> : null}
        </div>
      </Disclosure>
    </li>
  );
}
