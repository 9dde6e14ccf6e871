// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/vocabulary/column_names.h"

#include "core/import/text/words.h"

#include <algorithm>
#include <array>
#include <map>
#include <string>
#include <vector>

namespace lapwright::import {
namespace {

using base::Quantity;
using recording::Meaning;

struct Synonyms {
    Role role;
    Meaning meaning;
    double confidence;
    std::string_view phrases; // parted by commas; folded as words.h does it
};

constexpr std::array table{
    Synonyms{
        Role::time, Meaning::other, 0.95,
        "time,timestamp,time stamp,elapsed time,time elapsed,elapsed,session time,log time,record time,utc,utc time,"
        "time utc,time of day,datetime,date time,local time,running time,clock,clock time,time clock,gps clock,wall "
        "clock,zeit,zeitstempel,laufzeit,messzeit,uhrzeit,"
        "zeit utc,verstrichene zeit,temps,temps ecoule,horodatage,heure,heure utc,tiempo,tiempo transcurrido,"
        "marca tiempo,hora,hora utc,tempo,tempo trascorso,ora,ora utc,tijd,tijdstempel,verstreken tijd,kloktijd,"
        "epoch,epoch time,unix time,unixtime,unix,unix timestamp,device time,system time,phone time,logging time,"
        "relative time,time rel,time since start,seconds elapsed,elapsed seconds,timestamp since 1970,itow,tow,"
        "time of week,date and time,date heure,date et heure,fecha hora,fecha y hora,data ora,data e ora,datum zeit,"
        "datum uhrzeit,datum und uhrzeit,datum tijd,datum en tijd,tijdstip,zeitpunkt,instant,systemzeit,geratezeit"},
    Synonyms{Role::time, Meaning::other, 0.6,
             "t,ts,sec,second,seconds,secs,sekunde,sekunden,seconde,secondes,segundo,segundos,secondo,secondi,seconden,"
             "millis,"
             "milliseconds"},
    Synonyms{Role::date, Meaning::other, 0.9, "date,datum,fecha,jour,date utc,utc date"},
    Synonyms{Role::date, Meaning::other, 0.4, "data,dia,day,tag"},
    Synonyms{Role::north_south, Meaning::other, 0.6,
             "ns,n s,lat ns,latitude ns,lat hemisphere,latitude hemisphere,lat dir,lat n s,latitude n s,north south"},
    Synonyms{Role::east_west, Meaning::other, 0.6,
             "ew,e w,lon ew,longitude ew,lon hemisphere,longitude hemisphere,lon dir,long dir,lon e w,longitude e w,"
             "east west"},
    Synonyms{Role::channel, Meaning::latitude, 0.95,
             "latitude,breitengrad,geografische breite,latitud,latitudine,breedtegraad"},
    Synonyms{Role::channel, Meaning::latitude, 0.85, "lat,lat e7,latitude e7,breite,breedte"},
    Synonyms{Role::channel, Meaning::longitude, 0.95,
             "longitude,langengrad,laengengrad,geografische lange,longitud,longitudine,lengtegraad"},
    Synonyms{Role::channel, Meaning::longitude, 0.85, "lon,lng,long,lon e7,lng e7,longitude e7,lange,laenge,lengte"},
    Synonyms{
        Role::channel, Meaning::altitude, 0.9,
        "altitude,alt,elevation,ele,height,height msl,altitude msl,hohe,hoehe,hauteur,altitud,elevacion,altitudine,"
        "quota,hoogte,meereshohe"},
    Synonyms{Role::channel, Meaning::east, 0.85, "east,easting,ost,ostwert,rechtswert,oost,local east,estnord"},
    Synonyms{Role::channel, Meaning::north, 0.85, "north,northing,nord,nordwert,hochwert,norte,noord,local north"},
    Synonyms{Role::channel, Meaning::east, 0.5, "x,x coordinate,coordinate x,x coord,local x,est,este"},
    Synonyms{Role::channel, Meaning::north, 0.5, "y,y coordinate,coordinate y,y coord,local y"},
    Synonyms{Role::channel, Meaning::speed, 0.9,
             "speed,velocity,ground speed,speed over ground,sog,spd,speed 2d,speed "
             "3d,geschwindigkeit,geschw,vitesse,vitesse sol,velocidad,"
             "velocita,snelheid"},
    Synonyms{Role::channel, Meaning::speed, 0.7,
             "vehicle speed,car speed,fahrzeuggeschwindigkeit,fahrgeschwindigkeit,vitesse vehicule,velocidad vehiculo,"
             "velocita veicolo,voertuigsnelheid,rijsnelheid"},
    Synonyms{Role::channel, Meaning::speed, 0.5, "v"},
    Synonyms{Role::channel, Meaning::wheel_speed, 0.9,
             "wheel speed,wheelspeed,wheel velocity,speed wheel,drive speed,driven wheel speed,radgeschwindigkeit,"
             "vitesse roue,vitesse roues,velocidad rueda,velocidad ruedas,velocita ruota,velocita ruote,wielsnelheid,"
             "speedometer,tacho,wheel,wheels,rad,roue,rueda,ruota,wiel"},
    Synonyms{Role::channel, Meaning::course, 0.85,
             "course,heading,bearing,cog,course over ground,track angle,kurs,fahrtrichtung,cap,rumbo,rotta,koers,"
             "true course,course true,true heading,azimuth,azimut,hdg,crs,track true,true track"},
    Synonyms{Role::channel, Meaning::course, 0.5, "track,direction,richtung,direzione,richting,direccion"},
    Synonyms{
        Role::channel, Meaning::longitudinal_acceleration, 0.95,
        "longitudinal acceleration,longitudinal acc,longitudinal accel,long acceleration,long accel,long acc,lon acc,"
        "lon accel,lon acceleration,longacc,lonacc,longitudinal g,long g,lon g,g long,g lon,longg,glong,"
        "longitudinal g force,g force long,accel forward,acc forward,forward acceleration,forward acc,"
        "acceleration forward,langsbeschleunigung,langsb,langsbeschl,laengsbeschleunigung,beschleunigung langs,"
        "beschleunigung laengs,langs acc,acceleration longitudinale,acc longitudinale,aceleracion longitudinal,"
        "accelerazione longitudinale,longitudinale versnelling,langsversnelling,inline acc,inline acceleration"},
    Synonyms{Role::channel, Meaning::longitudinal_acceleration, 0.7,
             "acc x,accel x,accx,ax,a x,acceleration x,accelerometer x,g x,gx,g force x,beschleunigung x,aceleracion x,"
             "accelerazione x,versnelling x,acc length,accelerometer acceleration x,gforce x"},
    Synonyms{Role::channel, Meaning::longitudinal_acceleration, 0.5, "longitudinal"},
    Synonyms{
        Role::channel, Meaning::lateral_acceleration, 0.95,
        "accel left,acc left,acceleration left,leftward acceleration,lateral acceleration,lateral acc,lateral "
        "accel,lat acceleration,lat accel,lat acc,latacc,lateral g,lat g,"
        "g lat,latg,glat,lateral g force,g force lat,querbeschleunigung,querb,querbeschl,beschleunigung quer,quer acc,"
        "acceleration laterale,acceleration transversale,acc laterale,aceleracion lateral,accelerazione laterale,"
        "dwarsversnelling,laterale versnelling,cornering acceleration,side acceleration,transverse acceleration"},
    Synonyms{Role::channel, Meaning::lateral_acceleration, 0.7,
             "acc y,accel y,accy,ay,a y,acceleration y,accelerometer y,g y,gy,g force y,beschleunigung y,aceleracion y,"
             "accelerazione y,versnelling y,accelerometer acceleration y,gforce y"},
    Synonyms{Role::channel, Meaning::lateral_acceleration, 0.5, "lateral"},
    Synonyms{
        Role::channel, Meaning::vertical_acceleration, 0.95,
        "vertical acceleration,vertical acc,vertical accel,vert acceleration,vert accel,vert acc,vertical g,vert g,"
        "g vert,vertikalbeschleunigung,hochbeschleunigung,beschleunigung vertikal,acceleration verticale,"
        "aceleracion vertical,accelerazione verticale,verticale versnelling"},
    Synonyms{Role::channel, Meaning::vertical_acceleration, 0.7,
             "acc z,accel z,accz,az,a z,acceleration z,accelerometer z,g z,gz,g force z,beschleunigung z"},
    Synonyms{Role::channel, Meaning::yaw_rate, 0.95,
             "yaw rate,yawrate,yaw velocity,yaw speed,gierrate,giergeschwindigkeit,vitesse lacet,velocidad guinada,"
             "velocita imbardata,giersnelheid,gierwinkelgeschwindigkeit"},
    Synonyms{Role::channel, Meaning::yaw_rate, 0.7,
             "gyro z,gyr z,gyroz,gyroscope z,z rate,rate z,rotation rate z,omega z,wz,gyro yaw,"
             "drehrate,drehrate z"},
    // An angle as often as a rate.
    Synonyms{Role::channel, Meaning::yaw_rate, 0.5, "yaw,lacet,guinada,imbardata"},
    Synonyms{
        Role::channel, Meaning::throttle, 0.9,
        "throttle,tps,throttle angle,throttle opening,throttle valve,accelerator,accelerator pedal,gas,gas pedal,"
        "gaspedal,fahrpedal,drosselklappe,drosselklappenstellung,fahrpedalstellung,gaspedalstellung,accelerateur,"
        "pedale accelerateur,papillon,acelerador,pedal acelerador,mariposa,acceleratore,pedale acceleratore,farfalla,"
        "gasklep,gaspedaal,gasstand,pps,pedal,pedal position"},
    Synonyms{
        Role::channel, Meaning::brake, 0.85,
        "brake,brakes,brake switch,brake pedal,brake light,brake on,bremse,bremspedal,bremslicht,bremsschalter,frein,"
        "pedale frein,contacteur frein,freno,pedal freno,pedale freno,rem,rempedaal,remlicht,braking"},
    Synonyms{Role::channel, Meaning::brake_pressure, 0.95,
             "brake pressure,brake press,brk press,brk pressure,p brake,brake p,bremsdruck,pression frein,"
             "pression freinage,pression freins,presion freno,presion frenos,pressione freno,pressione freni,remdruk"},
    Synonyms{Role::channel, Meaning::steering_angle, 0.9,
             "steering,steering angle,steering wheel angle,steering wheel,steer,steer angle,swa,lenkwinkel,"
             "lenkradwinkel,lenkung,angle volant,volant,angulo volante,volante,sterzo,angolo sterzo,angolo volante,"
             "stuurhoek,stuur,stuurwiel,stuurwielhoek"},
    Synonyms{Role::channel, Meaning::gear, 0.9,
             "gear,current gear,gear number,gang,eingelegter gang,rapport,rapport engage,marcha,marcia,versnelling,"
             "versnellingsnummer"},
    Synonyms{Role::channel, Meaning::engine_speed, 0.95,
             "rpm,engine speed,engine rpm,revs,engine revs,n engine,nmot,drehzahl,motordrehzahl,regime,regime moteur,"
             "revoluciones,rpm motor,regimen,regimen motor,giri,giri motore,toerental,motortoerental,motor rpm,engine,"
             "revoluciones motor,toeren"},
    Synonyms{
        Role::channel, Meaning::distance, 0.9,
        "distance,dist,lap distance,lap dist,distance lap,distanz,strecke,weg,wegstrecke,distancia,distanza,afstand,"
        "odometer,trip,trip distance,travelled distance,traveled distance,rundendistanz,distance travelled,distance "
        "traveled,"
        "distance parcourue,distancia recorrida,distanza percorsa,afgelegde afstand,gefahrene strecke"},
    Synonyms{Role::channel, Meaning::lap_number, 0.9,
             "lap,lap number,lap no,lap nr,lap num,lap count,lap counter,lap index,laps,runde,rundennummer,rundenzahl,"
             "runde nr,rundennr,tour,numero tour,tour numero,no tour,vuelta,numero vuelta,num vuelta,giro,numero giro,"
             "num giro,ronde,rondenummer,ronde nummer,rondenr"},
    Synonyms{
        Role::channel, Meaning::lap_time, 0.9,
        "lap time,laptime,time lap,lap timer,current lap time,running lap time,rundenzeit,temps tour,temps au tour,"
        "tiempo vuelta,tempo giro,tempo sul giro,rondetijd,chrono"},
    Synonyms{Role::channel, Meaning::beacon, 0.85,
             "beacon,marker,lap marker,lap beacon,lap trigger,trigger,lap signal,timing line,finish line,start finish,"
             "zielsignal,rundensignal,baliza,balise,baken,marcador,marqueur"},
    Synonyms{
        Role::channel, Meaning::satellites, 0.9,
        "satellites,sats,num sats,numsats,num satellites,nsat,nsats,sat count,satellite count,satelliten,satelites,"
        "satelliti,satellieten,sv used,satellites used,number satellites,number sats,sats used,anzahl "
        "satelliten,locked satellites,satellites locked,satellites in use,"
        "nb satellites,nombre satellites"},
    Synonyms{Role::channel, Meaning::position_dilution, 0.9,
             "hdop,pdop,dop,gdop,dilution precision,horizontal dilution precision"},
    Synonyms{Role::channel, Meaning::position_accuracy, 0.8,
             "accuracy,position accuracy,horizontal accuracy,hacc,h acc,pos accuracy,pos acc,genauigkeit,"
             "positionsgenauigkeit,precision horizontale,precision,precision horizontal,nauwkeurigheid,accuratezza,"
             "accuracy horizontal,hor accuracy"},
    Synonyms{Role::channel, Meaning::air_temperature, 0.9,
             "air temperature,air temp,ambient temperature,ambient temp,ambient,ambient air temperature,outside temp,"
             "outside temperature,lufttemperatur,aussentemperatur,umgebungstemperatur,temperature air,"
             "temperature exterieure,temperature ambiante,temperatura aire,temperatura ambiente,temperatura aria,"
             "temperatura exterior,temperatura esterna,luchttemperatuur,buitentemperatuur"},
    Synonyms{
        Role::channel, Meaning::air_pressure, 0.9,
        "air pressure,barometric pressure,baro,baro pressure,barometer,ambient pressure,atmospheric pressure,luftdruck,"
        "umgebungsdruck,pression atmospherique,pression air,presion atmosferica,presion aire,pressione atmosferica,"
        "pressione aria,luchtdruk"},
    Synonyms{
        Role::channel, Meaning::humidity, 0.9,
        "humidity,relative humidity,air humidity,rh,luftfeuchtigkeit,luftfeuchte,feuchte,humidite,humidite relative,"
        "humedad,humedad relativa,umidita,umidita relativa,luchtvochtigheid,vochtigheid"},
};

// Words that say what is measured only together with a unit: "Lateral (g)", "Yaw (°/s)".
struct UnitSynonyms {
    Quantity quantity;
    Meaning meaning;
    double confidence;
    std::string_view phrases;
};

constexpr std::array unit_table{
    UnitSynonyms{Quantity::acceleration, Meaning::longitudinal_acceleration, 0.95,
                 "longitudinal,inline,in line,forward,fore aft,long,lon,langs,laengs,langsrichtung,laengsrichtung,"
                 "longitudinale,avant,avanti,adelante,vooruit,longitudinaal,lengterichting"},
    UnitSynonyms{Quantity::acceleration, Meaning::lateral_acceleration, 0.95,
                 "lateral,lat,left,leftward,side,sideways,transverse,cornering,quer,querrichtung,seitlich,laterale,"
                 "transversal,transversale,trasversale,lateraal,dwars,dwarsrichting,zijwaarts"},
    UnitSynonyms{Quantity::acceleration, Meaning::vertical_acceleration, 0.95,
                 "vertical,vert,up,vertikal,senkrecht,hochrichtung,verticale,verticaal"},
    UnitSynonyms{Quantity::acceleration, Meaning::longitudinal_acceleration, 0.7, "x"},
    UnitSynonyms{Quantity::acceleration, Meaning::lateral_acceleration, 0.7, "y"},
    UnitSynonyms{Quantity::acceleration, Meaning::vertical_acceleration, 0.7, "z"},
    UnitSynonyms{Quantity::angular_rate, Meaning::yaw_rate, 0.9,
                 "yaw,gier,gieren,lacet,guinada,imbardata,gier rate,heading rate"},
    UnitSynonyms{Quantity::angular_rate, Meaning::yaw_rate, 0.7, "z"},
};

constexpr auto satellite_words = std::to_array<std::string_view>(
    {"gps", "gnss", "glonass", "galileo", "sat", "satellite", "doppler", "rtk", "nmea"});
constexpr auto wheel_words = std::to_array<std::string_view>(
    {"front", "rear",   "left", "right", "fl",    "fr",     "rl", "rr", "lf", "rf", "lr",
     "vorne", "hinten", "f",    "r",     "links", "rechts", "vl", "vr", "hl", "hr", "wheel"});
// Words that change nothing about what is measured.
constexpr auto filler_words = std::to_array<std::string_view>(
    {"sensor",   "signal",    "channel", "value",     "ecu",   "can",   "obd",     "obd2", "imu",  "ins",
     "raw",      "filtered",  "filt",    "calc",      "avg",   "mean",  "logger",  "log",  "pos",  "position",
     "pct",      "percent",   "in",      "of",        "the",   "de",    "du",      "des",  "la",   "le",
     "del",      "della",     "di",      "der",       "van",   "el",    "au",      "0",    "1",    "2",
     "internal", "corrected", "kalman",  "estimated", "axis",  "achse", "axe",     "eje",  "asse", "as",
     "linear",   "user",      "motion",  "location",  "wgs84", "wgs",   "absolute"});

template <typename Words>
bool is_among(const Words& words, std::string_view word) {
    return std::ranges::find(words, word) != words.end();
}

std::vector<std::string> split_words(std::string_view text, char mark) {
    std::vector<std::string> words;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(mark), text.size());
        if (end > 0) words.emplace_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return words;
}

// The same words in any order give the same key.
std::string key_of(std::vector<std::string> words) {
    std::ranges::sort(words);
    std::string key;
    for (const auto& word : words)
        key += (key.empty() ? "" : " ") + word;
    return key;
}

template <typename Row, std::size_t N>
std::map<std::string, const Row*> make_index(const std::array<Row, N>& rows) {
    std::map<std::string, const Row*> index;
    for (const Row& row : rows)
        for (const auto& phrase : split_words(row.phrases, ','))
            index.emplace(key_of(split_words(phrase, ' ')), &row);
    return index;
}

NamedColumn named(const Synonyms& row) {
    return {row.role, row.meaning, row.confidence};
}

std::optional<NamedColumn> look_up(const std::vector<std::string>& words) {
    static const auto index = make_index(table);
    const auto found = index.find(key_of(words));
    return found == index.end() ? std::nullopt : std::optional(named(*found->second));
}

std::optional<NamedColumn> look_up_with(const std::vector<std::string>& words, Quantity quantity) {
    const std::string key = key_of(words);
    for (const UnitSynonyms& row : unit_table)
        for (const auto& phrase : split_words(row.phrases, ','))
            if (row.quantity == quantity && key_of(split_words(phrase, ' ')) == key)
                return NamedColumn{Role::channel, row.meaning, row.confidence};
    return std::nullopt;
}

template <typename Unwanted>
std::vector<std::string> without(std::vector<std::string> words, const Unwanted& unwanted) {
    std::erase_if(words, [&](const std::string& word) { return is_among(unwanted, word); });
    return words;
}

} // namespace

bool only_says_where(std::string_view text) {
    const auto words = split_words(plain_words(text), ' ');
    return std::ranges::all_of(words, [](const std::string& word) {
        return is_among(satellite_words, word) || is_among(wheel_words, word) || is_among(filler_words, word);
    });
}

bool names_gravity(std::string_view name) {
    constexpr auto joined = std::to_array<std::string_view>({"g", "latg", "longg", "glong", "glat", "gforce"});
    const auto words = split_words(plain_words(name), ' ');
    return std::ranges::any_of(words, [&](const std::string& word) { return is_among(joined, word); });
}

std::optional<NamedColumn> meaning_of_name(std::string_view name, Quantity written) {
    const std::vector<std::string> words = split_words(plain_words(name), ' ');
    if (words.empty()) return std::nullopt;
    const auto any_of = [&](const auto& list) {
        return std::ranges::any_of(words, [&](const std::string& word) { return is_among(list, word); });
    };
    const auto no_source = without(words, satellite_words);
    const auto no_filler = without(no_source, filler_words);
    const auto no_wheel = without(no_filler, wheel_words);
    double certainty = 1.0;
    for (const auto& attempt : {words, no_source, no_filler, no_wheel}) {
        auto column = look_up_with(attempt, written);
        if (!column) column = look_up(attempt);
        if (column) {
            column->confidence *= certainty;
            column->from_satellites = any_of(satellite_words);
            column->at_wheel = any_of(wheel_words);
            if (column->meaning == Meaning::speed && column->at_wheel) column->meaning = Meaning::wheel_speed;
            return column;
        }
        certainty *= 0.95;
    }
    return std::nullopt;
}

} // namespace lapwright::import
