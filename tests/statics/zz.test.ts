import { it } from 'vitest';
import { readFileSync, readdirSync } from 'node:fs';
import { readDescription } from '../../lib/description/read.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { luneOf } from '../../lib/statics/lune.js';
import { unitLoads } from '../../lib/statics/loads.js';
import { cutLevel } from '../../lib/statics/voids.js';
import { domeThrust, pullAt } from '../../lib/statics/dome-thrust.js';
import { placeTie } from '../../lib/statics/tie.js';
import { shellOfRevolution } from '../../lib/masonry/envelope.js';
it('x',{timeout:200000},()=>{
  for(const f of readdirSync('samples').filter(f=>f.endsWith('.yaml')&&!f.includes('keeps'))){
    const h0=readDescription(readFileSync('samples/'+f,'utf8'),f);
    const tie={level:'above openings',bars:2,diameter:10,yieldMpa:500,bondMpa:null,lap:null} as const;
    for (const t of [null,tie,{...tie,level:'footing' as const}]) {
    const house=setOutHouse({...h0,tie:t});
    for(const d of house.domes){
      const t0=performance.now();
      const loads=unitLoads(house,d); const lune=luneOf(d,loads,{renderInside:h0.wall.renderInside,renderOutside:h0.wall.renderOutside,footing:house.footings.find(x=>x.domeId===d.id)??null});
      const t1=performance.now();
      const bal=lune.total.masonry*2*Math.PI/(loads.masonry*shellOfRevolution(d))-1;
      const cut=cutLevel(house,d); const pt=placeTie(house,d,cut);
      const t2=performance.now();
      const r=domeThrust(lune,cut,pt);const q=r;
      const t3=performance.now();
      const W=lune.sections.at(-1)!;
      console.log(f,d.id,d.profile.shape,t?.level,'bal',bal.toExponential(1),'cut',cut.toFixed(0),'/',d.crownZ.toFixed(0),'tie',pt?.z?.toFixed(0),pt?.crosses.join(),'factor',r.factor.toFixed(3),q.factor.toFixed(3),'H',r.least?.toFixed(2),r.greatest?.toFixed(2),'mu',r.friction?.toFixed(3),'W',(W.dead.weight*6.28).toFixed(1),(W.snow.weight*6.28).toFixed(1),'pull',pt?pullAt(lune,'dead and snow',cut,pt.z)?.toFixed(2):'', 'ms',(t1-t0).toFixed(0),(t2-t1).toFixed(0),(t3-t2).toFixed(0));
    }}
  }
});
