/** The fields of this step. */
export default function SledStep() {
  return <p className="small soft">Nothing yet.</p>
}
