/** What must be in sight on every screen: whose limits these are, who comes first, and that pain stops throwing. */
export function Cautions({ academyName, isDemo }: { academyName: string; isDemo: boolean }) {
  return (
    <>
      <p>
        Limits are the published guideline or the league’s rule, as dated in the rule book; the league’s own
        rules, the athlete’s physician and athletic trainer come first. Pain stops all throwing. Nothing here
        is medical advice.
      </p>
      <p>
        {academyName}
        {isDemo ? ". A demo: the academy and everybody in it are invented." : ""}
      </p>
    </>
  );
}
