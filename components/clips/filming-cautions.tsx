import { Notice } from "@/components/ui/notice";

/** How to film without anybody getting hurt, and so that a coach can see; shown before anything is chosen. */
export function FilmingCautions() {
  return (
    <Notice isStatic word="Filming">
      From behind a screen or from the side, phone on a tripod, nobody in the ball’s path. The whole body in
      the picture from the first move to the finish; slow motion if the phone has it.
    </Notice>
  );
}
