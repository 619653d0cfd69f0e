// How English speakers say it, in further words: flush roller, ack, close. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfBooth3: Sayings<SaidMeaning> = {
  'flush roller': `
    I have washed the rollers / we have cleaned the rollers / roller is cleaned out / roller is in the thinner
    roller's been cleaned / roller has been washed / roller has been rinsed / roller cleaned at 10:30
    roller clean and away / roller washed and hung / roller rinsed twice / roller put in solvent / roller spun clean
    roller squeezed out / roller dipped in acetone, clean / roller wash complete / roller and frame washed
    roller head rinsed / roller cover washed / all the rollers are washed / two rollers washed / small roller cleaned
    big roller washed / mohair roller washed / fluffy roller washed / four inch roller cleaned
    nine inch roller washed / paint rollers washed out / flushed both rollers / cleaned the roller at 10:30
    washed up the rollers / washed the roller tray too, roller's clean
    rolled out in a tray of acetone, roller's clean / dunked the rollers in thinner / put my roller in the thinner
    put the rollers in to soak / stood the rollers in solvent / left the roller soaking in acetone
    worked acetone through the roller / worked solvent into the sleeve / wrung the roller out in ipa
    scraped the roller and washed it / scraped off the roller, rinsed in acetone / ran acetone through the roller
    ran the roller through acetone / gave the roller a wash / gave my roller an acetone bath
    did the roller, acetone then ipa / did my roller / that's ma roller washed oot / that's the rollers done
    I don wash roller / roller don clean / kindly note roller cleaned / please log roller washed
    cleaned the roller so it doesn't go hard / roller washed before lunch / washed roller straight after
    rolelr cleaned / roller wahsed / rola cleaned in acetone
  `,
  ack: `
    I have read the briefing and understood it / have gone through the brief / we both read it / has been read
    I confirm the brief / I confirm I have read it / I agree to the brief / I accept the brief / I get it
    I know the brief, read it / I'm clear on it / I've gone through it / I've been through the brief
    I've had a read of the brief / acknowledged by me / ack'd / acked / affirmative, read / aye understood
    agreed and read / brief is understood / brief ok by me / clear on everything in the brief / copied the brief
    done reading the brief / finished reading the brief, understood / got that, brief read
    got the message, understood / gone through it, clear / heard you, understood / just read it
    know what to do, brief read / loud and clear, read it / message received, understood / ok I have understood
    okay understood / read all of it / read and signed / read the lot / read the whole brief / read the whole thing
    roger that / saw the brief, understood / spray brief acknowledged / ten four / 10-4 brief read
    understood, brief is clear / understood fully / understood, thank you / understood sir / wilco / yes acknowledged
    yup read it / yeah, understood / I don read am / I don understand the brief, oga
    kindly note I have read the brief / please note I read and understood / aknowledged / akc / red it
    read teh brief
  `,
  close: `
    I have closed the session / I am closing the session / we have closed the session / we are closing the session
    we closed the session at 10:45 / has been closed, the session / session is over / session is finished
    session is done / session is complete / session is ended / session ended at 10:45 / session ends
    session end 10:45 / session closed, batch 2 / session wrapped up / session off / session's a wrap
    spray brief closed / brief over, close it / close the session, gun's flushed / close this session
    close our session / close off the session / close down the session / closed the session just now / end session now
    end of session, all out / end of the spray session / end the session please / end this session
    ending the session now / ending this session / shut down the spray session / shut off the session
    stop the session / terminate the session / that's the session shut / that's us closing the session
    wind up the session / wound up the spray session / wrap the session up / we're finished, close the session
    all out and flushed, close session / all done, session closed / booth's empty, session closed
    gun's clean, everyone out, close session / I don close session / session don close / kindly close the session
    please end the session / you can close the spray session / can be closed, the session's over
    mark session as closed / log session closed / log the session as over / put the session down as closed
    right, close the session / clsoe session / close sesion / session clsed / clothes the session
  `,
};
