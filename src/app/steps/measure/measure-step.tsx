/** The fields of this step. */
export default function MeasureStep() {
  return <p className="small soft">Nothing yet.</p>
}
