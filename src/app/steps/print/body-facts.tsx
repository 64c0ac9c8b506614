import type { BodyReport } from '../../../job/body-report.ts'
import type { OneSled, SledReport } from '../../../job/sled-report.ts'
import { capital, fixed } from '../../sheet/numbers.ts'

/** What will be printed: of each body its size, volume and weight, thinnest wall, and which way up it lies. */
export function BodyFacts({ report }: { readonly report: SledReport }) {
  return report.sleds.map((sled) => (
    <section key={sled.id} className="body-facts" aria-label={`Printed bodies of ${sled.name}`}>
      {sled.bodies.map((body) => (
        <OneBody key={body.id} body={body} sled={sled} />
      ))}
      {sled.bodies.length > 1 && sled.mass && (
        <p className="small">
          All of {sled.name}: {massText(sled.mass)} printed solid.
        </p>
      )}
      {sled.massHint && <p className="small soft">No weight: choose a material whose density is known.</p>}
    </section>
  ))
}

function OneBody({ body, sled }: { readonly body: BodyReport; readonly sled: OneSled }) {
  const { min, max } = body.bounds
  const size = [0, 1, 2].map((i) => fixed((max[i] as number) - (min[i] as number), 1)).join(' × ')
  const wall = body.thinnestWall
  return (
    <div className="body-fact">
      <h4>{capital(body.name || body.id)}</h4>
      <dl>
        <Fact name="Size">{size} mm</Fact>
        <Fact name="Volume">
          {fixed(body.volume / 1000, 1)} cm³
          {body.mass && sled.material && `, ${massText(body.mass)} printed solid in ${sled.material.name}`}
        </Fact>
        {wall && (
          <Fact name="Thinnest wall">
            {fixed(wall.thickness)} mm at z {fixed(wall.at.z, 1)}, θ {fixed(wall.at.theta, 0)}°, r {fixed(wall.at.r, 1)}
            ,{' '}
            {wall.between[0].nest === wall.between[1].nest
              ? `within the ${wall.between[0].nest}`
              : `between ${wall.between[0].nest} and ${wall.between[1].nest}`}
            ; the process prints {fixed(wall.limit)}
          </Fact>
        )}
        {body.orientation && <Fact name="Printed">{body.orientation.why}</Fact>}
        <Fact name="Mesh">
          {body.triangles} triangles, {body.faults.length === 0 ? 'one closed piece' : body.faults.join('; ')}
        </Fact>
      </dl>
    </div>
  )
}

function Fact({ name, children }: { readonly name: string; readonly children: React.ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  )
}

function massText({ least, most }: { readonly least: number; readonly most: number }): string {
  const [a, b] = [fixed(least, 1), fixed(most, 1)]
  return a === b ? `${a} g` : `${a} to ${b} g`
}
