/**
 * What people have filmed: occasions, by what brings people together.
 */
import { anyOf } from './phrases.ts';

/** An occasion that is named, whoever is asked to film it. */
export const OCCASION = anyOf(`
  event | events | function | do for | crew | production | shoot | op | ops | opening | reopening | launch | premiere | unveiling | inauguration | dedication | consecration | ribbon-cutting | ground-breaking | groundbreaking | topping out | open day/house/evening | anniversary | jubilee | centenary | bicentenary
  wedding | weddings | civil partnership | engagement | proposal | baptism | christening | bar mitzvah | bat mitzvah | quinceañera | quinceanera | funeral | memorial | wake | celebration of life | vow renewal | birthday | retirement | reunion | homecoming | blessing | ordination | confirmation service | evensong | vigil | pilgrimage | nativity | carol | carols
  conference | congress | convention | symposium | seminar | summit | forum | colloquium | workshop | masterclass | training day | lecture | talk | talks | reading | book launch | roundtable | panel | debate | hustings | hearing | assembly | agm | egm | general meeting | town hall | townhall | off-site | retreat | away-day | kick-off | sales meeting | roadshow | webcast | podcast | hackathon | pitch night | demo day | press conference | briefing | awards | award ceremony | prize-giving | prizegiving | graduation | commencement | convocation | swearing-in | investiture
  gala | ball | banquet | dinner | luncheon | breakfast | supper | barbecue | bbq | party | parties | bash | reception | cocktail | tasting | fundraiser | benefit | auction | quiz | bake-off | telethon | raffle | picnic | ceilidh | hootenanny | shindig | soiree | soirée
  festival | fest | fair | fayre | fete | fête | féte | carnival | parade | procession | pageant | rodeo | regatta | rally | expo | exhibition | exposition | trade show | tradeshow | show | showcase | market | flea market | county fair | harvest | blossom | light switch-on | fireworks | bonfire | pow-wow | powwow | hui | pōwhiri | powhiri | feis | fleadh | bonspiel | steam-up | swap meet | seed swap | plant sale
  concert | concerts | recital | recitals | gig | musical | opera | play | pantomime | panto | ballet | dance | disco | cabaret | comedy night | open mic | battle of the bands | screening | film night | choir | orchestra | music video | album | session | audition
  tournament | championship | championships | cup | league | final | finals | semi-final | match | game | race | races | derby | marathon | half-marathon | triathlon | gymkhana | trial | trials | bout | fight night | meet | sports day | swim gala | bee | spelling bee | contest | competition | tractor pull | ploughing | sheepdog | horse show | dog show | prom | camp | clinic | interview | interviews | ceremony | service | memorial service | inquiry commission
  hochzeit | konzert | turnier | messe | versammlung | jubiläum | tagung | feier | congres | congreso | colloque | séminaire | mariage | tournoi | spectacle | assemblée | boda | concierto | torneo | feria | jornada | matrimonio | convegno | festa | bruiloft | toernooi | beurs | jubileum | kermesse
`);
