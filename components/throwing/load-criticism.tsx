import { Disclosure } from "@/components/ui/disclosure";
import styles from "./load.module.css";

const PAPERS = [
  "Lolli et al. 2019, Br J Sports Med 53:921",
  "Windt and Gabbett 2019, Br J Sports Med 53:988",
  "Impellizzeri et al. 2020, J Athl Train 55:893–901",
  "Impellizzeri et al. 2020, Int J Sports Physiol Perform 15:907",
  "Impellizzeri et al. 2021, Sports Med, doi 10.1007/s40279-020-01378-6",
];

/** What has been published against ratios of this kind, in our words, with the papers. */
export function LoadCriticism() {
  return (
    <Disclosure summary="What researchers hold against such ratios">
      <div className={styles.criticism}>
        <p>
          The last 7 days are a part of the last 28. Two numbers that share a part move together even where
          one has nothing to do with the other: figures drawn at random agree by about 0.5 on a scale to 1
          (Lolli et al. 2019). The uncoupled ratio takes the shared days out. It is the same comparison on
          another scale, and either follows from the other (on the debate: Windt and Gabbett 2019).
        </p>
        <p>
          Where the 28 days beneath the line were replaced by one fixed number, or by numbers drawn at random,
          the ratio told groups of athletes apart nearly as well as the real one did. So the four weeks added
          little to the last one, and the authors would drop the ratio (Impellizzeri et al. 2021; on its other
          pitfalls, 2020).
        </p>
        <p>
          A measure of load cannot say whether more or less of it would be better for an arm (Impellizzeri et
          al. 2020, J Athl Train). That is why no line is drawn here between high and low, and why no number
          of pitches on these pages depends on a ratio.
        </p>
        <ul className={styles.papers}>
          {PAPERS.map((paper) => (
            <li key={paper}>{paper}</li>
          ))}
        </ul>
      </div>
    </Disclosure>
  );
}
