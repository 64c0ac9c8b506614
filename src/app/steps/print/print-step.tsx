/** The fields of this step. */
export default function PrintStep() {
  return <p className="small soft">Nothing yet.</p>
}
