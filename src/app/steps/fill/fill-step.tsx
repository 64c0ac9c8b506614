/** The fields of this step. */
export default function FillStep() {
  return <p className="small soft">Nothing yet.</p>
}
