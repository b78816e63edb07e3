/**
 * Messages with dates and words of the trade that ask nobody to film, and short ones that do.
 */
import { expect, test } from 'vitest';
import { readAt } from './reading.ts';

const lines = (list: string): string[] => list.trim().split(/\n\s*/);

const nothing = lines(`
  Hi everyone, the film club meets on Tuesday 8 December at 7pm in the annex. We will watch two shorts. Please bring a chair.
  Your booking for the Lakeview Hotel is confirmed for December 12-13. Check-in from 3pm. We look forward to welcoming you.
  Hi Kit, the gallery opening on December 12 was wonderful and your photos were a highlight. Could you send me the high-res files by Friday?
  Dear Kit, we have received your quote for the December 12 conference and will come back to you after the board meets on December 3.
  Kit, your quote is with the committee. They meet December 3 at 6pm. I will let you know.
  Hello, this is the dentist's office. You have an appointment on Friday December 4 at 9:15 am. Please call us to confirm.
  Team, please find the call sheet for Saturday December 12. Crew call 7am, wrap 6pm. See you on set.
  Thanks for the invoice. Payment of $900 will go out on December 15.
  We're hosting a photography workshop on December 12, 10am-4pm, $95 per person. Want to join? Sign up on our site.
  The community calendar: Dec 5 craft fair, Dec 12 choir concert 7pm, Dec 19 film night. All events free.
  Reminder: band practice is Thursday 7pm. Camera guy will be there to film the rehearsal so look sharp.
  FYI the drone permit for December 12 has been granted. Keep a copy with you on the day.
  Hi Kit! Are you coming to the wrap party on Saturday December 12? Starts at 8pm, bring a friend.
  Kit - can you bring back the tripod by Friday? I need it for my own shoot on Saturday.
  Would you be able to send over an updated invoice with our PO number? We need it by December 1.
  I'm a camera operator in Fargo with ten years of experience and I'm available December 12-20. My rate is $500 a day. Do you need anyone?
  We would like to invite you to tender for our cleaning services from December 12.
  Hi, just checking you got our contract for December 12? Please sign and return it by Monday.
  The venue called: load-in for Saturday is moved to 8am. Dock 3. Same parking as before.
  Hey, quick heads up for Saturday's job: call time is now 8:30 instead of 9. See you there!
  Your flight to Chicago on December 12 departs at 6:45 AM. Check in now.
  Notice of meeting: the housing association's AGM will be held on 12 December at 18:00. Recording devices are not permitted.
  Could you recommend a good wedding videographer in Fargo? My cousin gets married on December 12.
  Do you know someone who edits podcasts? Budget is around $200 an episode.
  We're looking for a venue for our gala on December 12 and saw that you filmed at the armory. How was the space?
  Hi Kit, mum's birthday is on the 12th, dinner at 7pm at ours. Bring the kids! x
  Lunch Thursday? Noon at the usual. I'll pay.
  The school's winter concert is on December 12 at 6pm. Parents may film from the back row only.
  The museum is closed from December 12 to January 3. Group bookings resume January 4.
  Your subscription ends on December 12. Renew now for $99 a year.
  The rental house: your hold on 2 cameras for December 12-13 expires Friday at noon. Confirm by email to keep it.
  Hi Kit, I hope you are well. I'd love to pick your brain about cameras over a coffee. Are you free on Thursday at 10?
  We have a used slider for sale, $150, pick up in Duluth before Friday.
  Hi, I'm doing a school project on filmmakers. Could I interview you on Wednesday at 4pm?
  Job alert: videographer, full-time, Minneapolis. Apply by December 12. Salary $55,000.
  Thank you for applying to our grant programme. Decisions are announced on December 12.
  Thanks for offering, but we found someone for the 12th. Will keep you in mind!
  Sorry Kit, the December 12 shoot is off. The client pulled the budget. I'll call you when it's back on.
  Sorry for the late notice, we have to cancel December 12.
  We postponed the festival to next summer. No new date yet, we'll get in touch then.
  You've been booked on the first aid course, 12 December, 9am to 4pm, room B. Bring ID.
  The insurance for your camera (value $4,200) is due on December 12. Pay $180 by then.
  This is to confirm your shift on December 12, 9am - 5pm at the food bank. Thank you for volunteering!
  Film permits: the city will close Main Street on December 12 from 6am to 8pm for a movie shoot. Residents should move their cars.
  Casting call! Extras needed for a short film in Duluth on December 12. Unpaid, lunch provided. Reply with a photo.
  Watch our new behind-the-scenes video! The December issue is out now.
  The livestream of Sunday's service will be at 10am as usual. Link below.
  Hi all, the livestream from last Sunday is online. Thanks to Kit for filming.
  Kit, the client is thrilled with the teaser. One tiny change: can you swap the music by Wednesday?
  Can you re-export the December 1 video in vertical? Need it by Friday noon.
  Please change the title card in the interview video to "Dr." and send it again by Thursday.
  Your parcel from the camera shop will arrive on Tuesday between 9 and 12.
  Are you still alive? Haven't heard from you in ages. Beer on Friday?
  The recording studio in Duluth has a free slot December 12, 2pm-6pm, $40 an hour. Interested in booking?
  Last call: tickets for the film gala December 12 are nearly gone. Doors 7pm, show 8pm, $25.
  Kit, the key to the hall is under the mat, code 4471. See you Saturday at 7.
  Confirming: Saturday December 12, Fargo, call 7am, wrap 6pm, $600. Contract attached. Looking forward to it!
  Happy birthday Kit! Hope you get a day off on the 12th.
  Good news: the grant is approved and the documentary about the harbor will start in 2027. I'll be in touch in the spring.
  What a night. Your livestream on Friday had 1,200 viewers. The chair wants to thank you personally on December 3 at noon, are you about?
  The choir is looking for two altos. Rehearsals Thursdays 7pm from December 10.
  Babysitter wanted Saturday 12 December 5pm-midnight, $15/hour. Call Jo.
  We are recruiting stewards for the winter carnival, December 12-13, 9am-5pm. £10 an hour. Interested? Reply by Friday.
  Marathon volunteers needed on December 12! Water stations from 6am. Sign up by December 1.
  Parking for the conference on December 12 is at lot C. Speakers: please send slides by December 8.
  Dear speaker, your session is on December 12 at 10:40. It will be recorded. Please arrive 20 minutes early and let us know by Friday if you need a laptop.
  Dear contributor, please send your headshot and a 50-word bio by December 4 for the programme.
  Hi Kit, are you free for a quick call on Thursday at 2pm to go over the edit notes?
  We'd like to reschedule our zoom to Friday at 10. Does that work for you?
  Please complete the attached supplier form by December 4 so that we can pay your invoice.
`);
test.each(nothing)('asks for none: %s', (text) => expect(readAt(text).isInquiry).toBe(false));

const work = lines(`
  Kit you about the 12th? Fargo. 7am. 600.
  12 Dec, Fargo, b cam, 8-6, $550. You in?
  Need a body with a camera in Fargo Sat 12 Dec. Ring me.
  Are you working on December 12? We've a harvest supper in Fargo that needs recording.
  Our videographer has broken her wrist. Could you possibly step in on December 12 in Fargo?
  Would December 12 suit you for our prize-giving? It's in Fargo.
  We wondered whether you might come and film our nativity on December 12.
  Is there any chance you could do the 12th of December, a seed-potato auction in Fargo?
  Pencil: 12 Dec, Fargo, vision mix, 0700-1900, $700.
  Availability check: December 12-13, Fargo, ENG camera. Day rate?
  I was given your name by Ann. We hold our regional quilting day on December 12 in Fargo and want it on film.
  Hi, how do I go about booking you for December 12? It's a tractor pull in Fargo.
  How are you fixed for December 12? Farm show, Fargo, streaming desk.
  Looking to crew up for December 12, Fargo. Rate $500. Shout if keen.
  Do you have December 12 open? Our synagogue in Fargo dedicates a scroll and we'd be glad of a recording.
  Gig going on Dec 12 in Fargo, 10 hours, 450 plus food. Want it?
  Hey, got anything on Dec 12? Need someone for audio in Fargo.
  We are a small theatre in Fargo and our last night is December 12. What do you charge?
  Please could you give me a price for filming a retirement do in Fargo on December 12, 6pm till 10pm.
  Requesting a quotation: one camera operator, December 12, Fargo, 08:00-17:00.
  I represent the Fargo Rose Society. On December 12 we open our new glasshouse. Might you film the ribbon being cut?
  Short notice I know but tomorrow in Fargo, 2pm, our streamer has flu. Can you?
  The mayor opens the bridge in Fargo on December 12 at 11am and someone ought to record it. You came to mind.
  We're after a second shooter December 12, Fargo.
  Any interest in a one-day job on December 12 in Fargo? $600.
  Can I book you for December 12? Fargo curling club.
  I'd like to hire you for my parents' golden wedding, December 12, Fargo.
  Would love your help on December 12: a charity swim in Fargo.
  Could we have you on December 12 in Fargo for a swim gala?
  Our usual team can't do December 12. It's the Fargo bee-keepers' honey show. Are you able?
  Dec 12 / Fargo / pitch night / 2 cams + stream / $1200 / y or n by Mon
  Wanted: camera op, 12 December, Fargo. $500. Text Bo.
  Subject: December 12 - are you available? We need 1 op in Fargo.
  Saw your reel. Shooting a music video in Fargo on December 12, want in?
  The parish would be grateful if you would film the ordination on December 12 in Fargo.
  Is the 12th taken? If not we'd snap you up for the Fargo wrestling meet.
  We have a slot to fill: camera 3, December 12, Fargo, call 6am.
  Hoping you can help us out on December 12. Live stream of a funeral in Fargo, 11am.
  Fancy Fargo on the 12th? Comedy night, two cameras, £400.
  Sorry to bother you. My daughter's recital is on December 12 in Fargo, and I'd pay to have it filmed properly.
  Mail below from a client, are you up for it? Fargo, December 12, one camera.
  Got room for one more on Dec 12? Fargo ice races, GoPro rig plus long lens.
  Who do I talk to about getting December 12 filmed? It's our town's 150th, in Fargo.
  Could December 12 work? Our congress in Fargo is short of a vision mixer.
`);
test.each(work)('asks for work: %s', (text) => expect(readAt(text).isInquiry).toBe(true));
