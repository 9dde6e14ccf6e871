<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ja_JP">
<context>
    <name>Lapwright</name>
    <message>
        <source>
Note of A: %1</source>
        <translation>
Aのメモ: %1</translation>
    </message>
    <message>
        <source>
Note of B: %1</source>
        <translation>
Bのメモ: %1</translation>
    </message>
    <message>
        <source>
Note: %1</source>
        <translation>
メモ: %1</translation>
    </message>
    <message>
        <source> %1 without a date stand last, in the table only; F2 in the list gives them one.</source>
        <translation> 日付のない%1件は最後に、表だけにあります。一覧のF2で日付を付けられます。</translation>
    </message>
    <message>
        <source> (derived)</source>
        <translation> (算出)</translation>
    </message>
    <message>
        <source> Nothing had to be mended.</source>
        <translation> 修正は不要でした。</translation>
    </message>
    <message>
        <source> Of %1 the books said different things: &quot;lapwright book conflicts&quot; shows and settles them.</source>
        <translation> %1で記録帳どうしの内容が食い違っています。「lapwright book conflicts」で確認し、決められます。</translation>
    </message>
    <message>
        <source> Of the known ones %1 that were removed: the list of removed sessions brings them back.</source>
        <translation> 既知のうち%1は以前に外したものです。外したセッションの一覧から戻せます。</translation>
    </message>
    <message>
        <source> One without a date stands last, in the table only; F2 in the list gives it one.</source>
        <translation> 日付のない1件は最後に、表だけにあります。一覧のF2で日付を付けられます。</translation>
    </message>
    <message>
        <source> and </source>
        <translation> と </translation>
    </message>
    <message>
        <source> at first, %1 at last</source>
        <translation> (最初)、%1 (最後)</translation>
    </message>
    <message>
        <source> or </source>
        <translation> または </translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source> · video: %1</source>
        <translation> · 動画: %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has this key now, and will lose it.</source>
        <translation>このキーは今「%1」に割り当てられています。割り当てると、そちらは使えなくなります。</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is taken as the %2</source>
        <translation>「%1」を%2としました</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is taken as the %2, this one kept without a meaning</source>
        <translation>「%1」を%2と解釈し、この列は意味を付けずに残しました</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is too long</source>
        <translation>「%1」が長すぎます</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be a number from %2 to %3</source>
        <translation>「%1」は%2から%3までの数でなければなりません</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be text</source>
        <translation>「%1」は文字列でなければなりません</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names no item of a setup with its value</source>
        <translation>「%1」はセッティングの項目と値になっていません</translation>
    </message>
    <message>
        <source>&quot;Try next&quot; then speaks to the driver of %1 alone; the book remembers which car is yours. Press again for both drivers.</source>
        <translation>「次に試す」が%1のドライバーだけに向けたものになります。どちらが自分の車かは記録帳が覚えています。もう一度押すと両方のドライバー向けに戻ります。</translation>
    </message>
    <message>
        <source>&quot;columns&quot; is missing</source>
        <translation>「columns」がありません</translation>
    </message>
    <message>
        <source>&quot;conditions&quot; must be an object</source>
        <translation>「conditions」はオブジェクトでなければなりません</translation>
    </message>
    <message>
        <source>&quot;decimal_mark&quot; is neither point nor comma</source>
        <translation>「decimal_mark」がピリオドでもカンマでもありません</translation>
    </message>
    <message>
        <source>&quot;delimiter&quot; is neither one character nor &quot;blanks&quot;</source>
        <translation>「delimiter」が1文字でも「blanks」でもありません</translation>
    </message>
    <message>
        <source>&quot;form&quot; is not known</source>
        <translation>「form」の値が未知です</translation>
    </message>
    <message>
        <source>&quot;half_width_m&quot; is not a number from 1 to 60: a wider timing line would be crossed by other parts of the track</source>
        <translation>「half_width_m」が1から60までの数ではありません。計測ラインがそれより広いと、コースのほかの部分が横切ってしまいます</translation>
    </message>
    <message>
        <source>&quot;items&quot; are too many</source>
        <translation>「items」が多すぎます</translation>
    </message>
    <message>
        <source>&quot;items&quot; must be a list</source>
        <translation>「items」はリストでなければなりません</translation>
    </message>
    <message>
        <source>&quot;known&quot; must be an object</source>
        <translation>「known」はオブジェクトでなければなりません</translation>
    </message>
    <message>
        <source>&quot;length_m&quot; is not a number from 0 to 50000</source>
        <translation>「length_m」が0から50000までの数ではありません</translation>
    </message>
    <message>
        <source>&quot;meaning&quot; is not known</source>
        <translation>「meaning」の値が未知です</translation>
    </message>
    <message>
        <source>&quot;row_rate_hz&quot; is outside 0.1 to 10,000</source>
        <translation>「row_rate_hz」が0.1から10,000の範囲にありません</translation>
    </message>
    <message>
        <source>&quot;scale&quot; is no usable number</source>
        <translation>「scale」が使える数ではありません</translation>
    </message>
    <message>
        <source>&quot;segments&quot; has more than 500 entries, too many to tell anything of one</source>
        <translation>「segments」が500を超えています。多すぎて1つずつの判定ができません</translation>
    </message>
    <message>
        <source>&quot;segments&quot; is not a list</source>
        <translation>「segments」がリストではありません</translation>
    </message>
    <message>
        <source>&quot;springs&quot; must be an object</source>
        <translation>「springs」はオブジェクトでなければなりません</translation>
    </message>
    <message>
        <source>&quot;springs&quot; need both &quot;front_n_per_mm&quot; and &quot;rear_n_per_mm&quot;</source>
        <translation>「springs」には「front_n_per_mm」と「rear_n_per_mm」の両方が必要です</translation>
    </message>
    <message>
        <source>&quot;turns_m&quot; is not a list of rising distances on the lap</source>
        <translation>「turns_m」がラップ上の昇順の距離のリストではありません</translation>
    </message>
    <message>
        <source>&quot;unit&quot; is not known</source>
        <translation>「unit」の値が未知です</translation>
    </message>
    <message>
        <source>&quot;use&quot; is not known</source>
        <translation>「use」の値が未知です</translation>
    </message>
    <message>
        <source>%1  lap %2 · %3 · %4 s to A · %5</source>
        <translation>%1  %2周目 · %3 · Aとの差 %4 s · %5</translation>
    </message>
    <message>
        <source>%1 %2 %3, %4 UTC</source>
        <translation>%3年%2%1日 %4 UTC</translation>
    </message>
    <message>
        <source>%1 %2 later</source>
        <translation>%1が%2奥</translation>
    </message>
    <message>
        <source>%1 %2 less</source>
        <translation>%1が%2少ない</translation>
    </message>
    <message>
        <source>%1 %2 sooner</source>
        <translation>%1が%2手前</translation>
    </message>
    <message>
        <source>%1 (%2 s off its best)</source>
        <translation>%1（ベストから%2 s）</translation>
    </message>
    <message>
        <source>%1 (A alone)</source>
        <translation>%1 (Aのみ)</translation>
    </message>
    <message>
        <source>%1 (B alone)</source>
        <translation>%1 (Bのみ)</translation>
    </message>
    <message>
        <source>%1 MB</source>
        <translation>%1 MB</translation>
    </message>
    <message>
        <source>%1 against %2</source>
        <translation>%1 対 %2</translation>
    </message>
    <message>
        <source>%1 ahead %2</source>
        <translation>%1先行 %2</translation>
    </message>
    <message>
        <source>%1 ahead by %2</source>
        <translation>%1が%2先行</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1と%2</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1、ほか%2件</translation>
    </message>
    <message>
        <source>%1 and %2 were driven at the same time, so not with one car</source>
        <translation>%1と%2は同じ時刻に走っているため、同じ車ではありません</translation>
    </message>
    <message>
        <source>%1 and %2 were saved; the damaged book is kept as %3.</source>
        <translation>%1と%2を救出しました。破損した記録帳は%3として残してあります。</translation>
    </message>
    <message>
        <source>%1 are all plausible: taken as %2</source>
        <translation>%1のどれもありうるため、%2と解釈</translation>
    </message>
    <message>
        <source>%1 are among those</source>
        <translation>%1件</translation>
    </message>
    <message>
        <source>%1 are both plausible: taken as %2</source>
        <translation>%1のどちらもありうるため、%2と解釈</translation>
    </message>
    <message>
        <source>%1 are probably worth %2 a lap to %3, most %4</source>
        <translation>%1の差は%4、おそらく%3に1周あたり%2有利です</translation>
    </message>
    <message>
        <source>%1 are worth %2 a lap to %3, most %4</source>
        <translation>%1の差は%4、%3に1周あたり%2有利です</translation>
    </message>
    <message>
        <source>%1 as a first step</source>
        <translation>まずは%1</translation>
    </message>
    <message>
        <source>%1 at %2, %3</source>
        <translation>%1: %2、%3</translation>
    </message>
    <message>
        <source>%1 by its own line</source>
        <translation>自分の計測ラインで%1</translation>
    </message>
    <message>
        <source>%1 bytes of zeros at the end were left out: the logger may have lost power</source>
        <translation>末尾のゼロ%1バイトを除外しました。ロガーの電源が切れたのかもしれません</translation>
    </message>
    <message>
        <source>%1 came from the friend&apos;s book, %2; with %3 and %4.</source>
        <translation>友人の記録帳から%1を取り込みました（%2）。ほかに%3、%4。</translation>
    </message>
    <message>
        <source>%1 came out of the book: open its file to change what its columns mean.</source>
        <translation>%1は記録帳から開いたものです。列の意味を変えるには、元のファイルを開いてください。</translation>
    </message>
    <message>
        <source>%1 cannot be told</source>
        <translation>%1は判定不可</translation>
    </message>
    <message>
        <source>%1 cannot be written: %2</source>
        <translation>%1を書き込めません: %2</translation>
    </message>
    <message>
        <source>%1 cell is not readable and was left out%2</source>
        <translation>読めないセル%1個を除外しました%2</translation>
    </message>
    <message>
        <source>%1 cell of %2 taken as &quot;no value&quot; and left out</source>
        <translation>%2のセル%1個を「値なし」と解釈し、除外しました</translation>
    </message>
    <message>
        <source>%1 cells are not readable and were left out%2</source>
        <translation>読めないセル%1個を除外しました%2</translation>
    </message>
    <message>
        <source>%1 cells of %2 taken as &quot;no value&quot; and left out</source>
        <translation>%2のセル%1個を「値なし」と解釈し、除外しました</translation>
    </message>
    <message>
        <source>%1 characters of UTF-16 are cut or damaged</source>
        <translation>UTF-16の文字%1個が途切れているか壊れています</translation>
    </message>
    <message>
        <source>%1 clean laps without the change, %2 with it; a drift of %3 s from lap to lap is taken out</source>
        <translation>クリアラップは変更なし%1周、変更あり%2周。1周ごとに%3 sの推移を差し引き済み</translation>
    </message>
    <message>
        <source>%1 columns by %2: %3</source>
        <translation>%1列、%2区切り: %3</translation>
    </message>
    <message>
        <source>%1 costs %2, most %3</source>
        <translation>%1は%3、%2の損</translation>
    </message>
    <message>
        <source>%1 earns %2, most %3</source>
        <translation>%1は%3、%2の得</translation>
    </message>
    <message>
        <source>%1 edits are not in the book</source>
        <translation>記録帳に未保存の変更 %1件</translation>
    </message>
    <message>
        <source>%1 edits are not in the book yet.</source>
        <translation>記録帳にまだ保存されていない変更が%1件あります。</translation>
    </message>
    <message>
        <source>%1 fields</source>
        <translation>%1項目</translation>
    </message>
    <message>
        <source>%1 fit the speed</source>
        <translation>%1が速度と合います</translation>
    </message>
    <message>
        <source>%1 fits the positions</source>
        <translation>%1が位置と合います</translation>
    </message>
    <message>
        <source>%1 fits the speed between the positions</source>
        <translation>%1が位置間の速度と合います</translation>
    </message>
    <message>
        <source>%1 gap in %2 and what was sampled with it, the longest of %3 s at %4 s</source>
        <translation>%2と同時に記録した値に欠落が%1か所、最長は%4 sの時点の%3 s</translation>
    </message>
    <message>
        <source>%1 gaps in %2 and what was sampled with it, the longest of %3 s at %4 s</source>
        <translation>%2と同時に記録した値に欠落が%1か所、最長は%4 sの時点の%3 s</translation>
    </message>
    <message>
        <source>%1 gets quicker all the way to %2, worth %3 there.</source>
        <translation>%1は%2までずっと速くなり続け、そこで%3の得です。</translation>
    </message>
    <message>
        <source>%1 has no positions: aligned on cornering, so its error bars are wider%2</source>
        <translation>%1には位置がなく、旋回で位置を合わせたため、誤差の範囲が広くなります%2</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1（%2）</translation>
    </message>
    <message>
        <source>%1 is %2&apos;s.</source>
        <translation>%1は%2が優勢です。</translation>
    </message>
    <message>
        <source>%1 is a setup sheet, but no single open session is of its driver and car, or has its name: open that session first, or read the sheet under Setup on the Causes page.</source>
        <translation>%1はセッティングシートですが、ドライバーと車、または名前が一致する開いたセッションを1つに決められません。先にそのセッションを開くか、「要因」ページの「セッティング」からシートを読み込んでください。</translation>
    </message>
    <message>
        <source>%1 is also quicker on the straights, worth %2 s in all.</source>
        <translation>ストレートでも%1が速く、合計%2 sの得です。</translation>
    </message>
    <message>
        <source>%1 is left out: %2</source>
        <translation>%1は対象外: %2</translation>
    </message>
    <message>
        <source>%1 is probably %2&apos;s.</source>
        <translation>%1はおそらく%2が優勢です。</translation>
    </message>
    <message>
        <source>%1 is probably quicker in %2, by %3.</source>
        <translation>%2ではおそらく%1が%3速いです。</translation>
    </message>
    <message>
        <source>%1 is probably worth %2 a lap to %3, most %4</source>
        <translation>%1の差は%4、おそらく%3に1周あたり%2有利です</translation>
    </message>
    <message>
        <source>%1 is probably worth %2 a lap to %3, most %4.</source>
        <translation>%1の差は%4、おそらく%3に1周あたり%2有利です。</translation>
    </message>
    <message>
        <source>%1 is quicker in %2, by %3.</source>
        <translation>%2では%1が%3速いです。</translation>
    </message>
    <message>
        <source>%1 is quicker on the straights, worth %2 s in all.</source>
        <translation>ストレートでは%1が速く、合計%2 sの得です。</translation>
    </message>
    <message>
        <source>%1 is quicker there in %2 of %3 clean laps</source>
        <translation>そこでは%1がクリアラップ%3周のうち%2周で速く走っています</translation>
    </message>
    <message>
        <source>%1 is quicker there in all %2 clean laps</source>
        <translation>そこでは%1がクリアラップ%2周のすべてで速く走っています</translation>
    </message>
    <message>
        <source>%1 is quickest with downforce %2 (%3 to %4), worth %5.</source>
        <translation>%1が最も速いのはダウンフォース%2のとき（%3～%4）で、%5の得です。</translation>
    </message>
    <message>
        <source>%1 is taken at full throttle: it bounds the grip from below only</source>
        <translation>%1は全開で通過しているため、グリップの下限しかわかりません</translation>
    </message>
    <message>
        <source>%1 is there twice</source>
        <translation>%1が二重に入っています</translation>
    </message>
    <message>
        <source>%1 is worth %2 a lap to %3, most %4</source>
        <translation>%1の差は%4、%3に1周あたり%2有利です</translation>
    </message>
    <message>
        <source>%1 is worth %2 a lap to %3, most %4.</source>
        <translation>%1の差は%4、%3に1周あたり%2有利です。</translation>
    </message>
    <message>
        <source>%1 is written, but by its values %2 is plausible too: taken as written</source>
        <translation>%1と書かれていますが、値からは%2もありえます。書かれたとおりに解釈</translation>
    </message>
    <message>
        <source>%1 is written.</source>
        <translation>%1を書き出しました。</translation>
    </message>
    <message>
        <source>%1 kept pairings</source>
        <translation>保存したペア%1件</translation>
    </message>
    <message>
        <source>%1 lap %2</source>
        <translation>%1 %2周目</translation>
    </message>
    <message>
        <source>%1 less</source>
        <translation>%1減</translation>
    </message>
    <message>
        <source>%1 line between the names and the readings is none of either and was left out%2</source>
        <translation>名前と値の間の %1 行は、どちらでもないため除きました%2</translation>
    </message>
    <message>
        <source>%1 line holds no values and was left out%2</source>
        <translation>値のない%1行を除外しました%2</translation>
    </message>
    <message>
        <source>%1 line is a comment and left out%2</source>
        <translation>コメントの%1行を除外しました%2</translation>
    </message>
    <message>
        <source>%1 line is no sentence and was left out%2</source>
        <translation>センテンスではない%1行を除外しました%2</translation>
    </message>
    <message>
        <source>%1 lines are comments and left out%2</source>
        <translation>コメントの%1行を除外しました%2</translation>
    </message>
    <message>
        <source>%1 lines are no sentences and were left out%2</source>
        <translation>センテンスではない%1行を除外しました%2</translation>
    </message>
    <message>
        <source>%1 lines between the names and the readings are none of either and were left out%2</source>
        <translation>名前と値の間の %1 行は、どちらでもないため除きました%2</translation>
    </message>
    <message>
        <source>%1 lines hold no values and were left out%2</source>
        <translation>値のない%1行を除外しました%2</translation>
    </message>
    <message>
        <source>%1 looks to be taken below the limit</source>
        <translation>%1は限界まで使わずに走っているようです</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1増</translation>
    </message>
    <message>
        <source>%1 m² of drag for each m² of downforce</source>
        <translation>ダウンフォース1 m²ごとに空気抵抗%1 m²</translation>
    </message>
    <message>
        <source>%1 new sessions</source>
        <translation>新しいセッション%1件</translation>
    </message>
    <message>
        <source>%1 no fit</source>
        <translation>%1 モデル外</translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation>メモ%1件</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%2の%1</translation>
    </message>
    <message>
        <source>%1 of %2 judged predictions held: %3 to %4 % of such predictions do (95 % interval), and 95 % should.</source>
        <translation>判定した予測%2件のうち%1件が区間内でした：このような予測の%3〜%4 %が当たり（95 %区間）、95 %であるべきです。</translation>
    </message>
    <message>
        <source>%1 of %2 · </source>
        <translation>%1 / %2 · </translation>
    </message>
    <message>
        <source>%1 pairings</source>
        <translation>ペア%1件</translation>
    </message>
    <message>
        <source>%1 pairings, the last one first. Return opens one with both its sessions, Delete takes it out.</source>
        <translation>ペア%1件、新しい順。Returnで両方のセッションと一緒に開き、Deleteで外します。</translation>
    </message>
    <message>
        <source>%1 position beyond 90° of latitude or 360° of longitude, or not readable: left out%2</source>
        <translation>緯度90°または経度360°を超えるか、読めない位置%1個を除外しました%2</translation>
    </message>
    <message>
        <source>%1 position of exactly 0, 0, as receivers write without a fix: left out%2</source>
        <translation>測位できないときに受信機が書く、ちょうど0, 0の位置%1個を除外しました%2</translation>
    </message>
    <message>
        <source>%1 position with only one of latitude and longitude: left out%2</source>
        <translation>緯度か経度の片方しかない位置%1個を除外しました%2</translation>
    </message>
    <message>
        <source>%1 positions</source>
        <translation>%1の位置</translation>
    </message>
    <message>
        <source>%1 positions beyond 90° of latitude or 360° of longitude, or not readable: left out%2</source>
        <translation>緯度90°または経度360°を超えるか、読めない位置%1個を除外しました%2</translation>
    </message>
    <message>
        <source>%1 positions of exactly 0, 0, as receivers write without a fix: left out%2</source>
        <translation>測位できないときに受信機が書く、ちょうど0, 0の位置%1個を除外しました%2</translation>
    </message>
    <message>
        <source>%1 positions only repeat another while the car drove on: they were left out</source>
        <translation>車が走っているのに前と同じままの位置%1個を除外しました</translation>
    </message>
    <message>
        <source>%1 positions with only one of latitude and longitude: left out%2</source>
        <translation>緯度か経度の片方しかない位置%1個を除外しました%2</translation>
    </message>
    <message>
        <source>%1 predicted: %2 a lap</source>
        <translation>予測 %1、1周で%2</translation>
    </message>
    <message>
        <source>%1 removed sessions can be brought back.</source>
        <translation>外したセッション%1件を戻せます。</translation>
    </message>
    <message>
        <source>%1 row has no readable time and was left out</source>
        <translation>時刻が読めない%1行を除外しました</translation>
    </message>
    <message>
        <source>%1 row has too few or too many cells and was left out%2</source>
        <translation>セルの数が合わない%1行を除外しました%2</translation>
    </message>
    <message>
        <source>%1 row is out of order in time and was left out</source>
        <translation>時刻の順に並んでいない%1行を除外しました</translation>
    </message>
    <message>
        <source>%1 row repeats the time of the row before and was left out</source>
        <translation>前の行と同じ時刻の%1行を除外しました</translation>
    </message>
    <message>
        <source>%1 rows are out of order in time and were left out</source>
        <translation>時刻の順に並んでいない%1行を除外しました</translation>
    </message>
    <message>
        <source>%1 rows have no readable time and were left out</source>
        <translation>時刻が読めない%1行を除外しました</translation>
    </message>
    <message>
        <source>%1 rows have too few or too many cells and were left out%2</source>
        <translation>セルの数が合わない%1行を除外しました%2</translation>
    </message>
    <message>
        <source>%1 rows repeat the time of the row before and were left out</source>
        <translation>前の行と同じ時刻の%1行を除外しました</translation>
    </message>
    <message>
        <source>%1 s a lap</source>
        <translation>1周%1 s</translation>
    </message>
    <message>
        <source>%1 s less coasting</source>
        <translation>惰性が%1 s短い</translation>
    </message>
    <message>
        <source>%1 s lost near %2 m</source>
        <translation>%2 m付近で%1 sのロス</translation>
    </message>
    <message>
        <source>%1 s more coasting</source>
        <translation>惰性が%1 s長い</translation>
    </message>
    <message>
        <source>%1 s slower than the usual lap</source>
        <translation>普段のラップより%1 s遅い</translation>
    </message>
    <message>
        <source>%1 s, 95 % between %2 and %3</source>
        <translation>%1 s、95 % 範囲は%2から%3</translation>
    </message>
    <message>
        <source>%1 sentence has a wrong checksum and was left out%2</source>
        <translation>チェックサムの合わないセンテンス%1件を除外しました%2</translation>
    </message>
    <message>
        <source>%1 sentence was written without a fix</source>
        <translation>測位なしで書かれたセンテンスが%1件あります</translation>
    </message>
    <message>
        <source>%1 sentences have a wrong checksum and were left out%2</source>
        <translation>チェックサムの合わないセンテンス%1件を除外しました%2</translation>
    </message>
    <message>
        <source>%1 sentences were written without a fix</source>
        <translation>測位なしで書かれたセンテンスが%1件あります</translation>
    </message>
    <message>
        <source>%1 sessions</source>
        <translation>セッション%1件</translation>
    </message>
    <message>
        <source>%1 sessions were timed at another line of the track than the rest, so that lap times differ a little without a reason: %2.</source>
        <translation>%1件のセッションがほかと違う計測ラインで計時されているため、実際の差がなくてもラップタイムがわずかに違って出ます: %2。</translation>
    </message>
    <message>
        <source>%1 speed of exactly 0 between rows of a moving car, as receivers write without a fix: left out%2</source>
        <translation>測位できないときに受信機が書く、走行中のちょうど0の速度%1個を除外しました%2</translation>
    </message>
    <message>
        <source>%1 speeds of exactly 0 between rows of a moving car, as receivers write without a fix: left out%2</source>
        <translation>測位できないときに受信機が書く、走行中のちょうど0の速度%1個を除外しました%2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1～%2</translation>
    </message>
    <message>
        <source>%1 to %2 s at %3 m²</source>
        <translation>%3 m²で%1～%2 s</translation>
    </message>
    <message>
        <source>%1 together are probably worth %2 s a lap, most %3</source>
        <translation>%1を合わせると、%3、おそらく1周%2 sの得です</translation>
    </message>
    <message>
        <source>%1 together are worth %2 s a lap, most %3</source>
        <translation>%1を合わせると、%3、1周%2 sの得です</translation>
    </message>
    <message>
        <source>%1 was made for files of another shape: only columns of the same name follow it</source>
        <translation>%1は別の形のファイル用です。同じ名前の列だけに使いました</translation>
    </message>
    <message>
        <source>%1 were known already</source>
        <translation>既知%1件</translation>
    </message>
    <message>
        <source>%1 would be shorter than %2</source>
        <translation>%1が%2より短くなります</translation>
    </message>
    <message>
        <source>%1 would be worth %2 a lap to %3</source>
        <translation>%1で%3は1周%2速くなる見込み</translation>
    </message>
    <message>
        <source>%1 would cost %2 a lap to %3</source>
        <translation>%1で%3は1周%2遅くなる見込み</translation>
    </message>
    <message>
        <source>%1&apos;s aero is probably worth %2 a lap: %3; %4.</source>
        <translation>%1の空力はおそらく1周%2の得です: %3。%4。</translation>
    </message>
    <message>
        <source>%1&apos;s aero is worth %2 a lap: %3; %4.</source>
        <translation>%1の空力は1周%2の得です: %3。%4。</translation>
    </message>
    <message>
        <source>%1&apos;s lap has no such moment</source>
        <translation>%1のラップにこの瞬間はありません</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1、%2</translation>
    </message>
    <message>
        <source>%1, %2 with figures; </source>
        <translation>%1、特性値のある%2; </translation>
    </message>
    <message>
        <source>%1, %2, and the laps&apos; %3 disagree by %4 standard errors</source>
        <translation>%1 %2と、ラップから求めた%3は、標準誤差の%4倍食い違っています</translation>
    </message>
    <message>
        <source>%1, %2: </source>
        <translation>%1、%2: </translation>
    </message>
    <message>
        <source>%1, as it became known</source>
        <translation>%1、推定の推移</translation>
    </message>
    <message>
        <source>%1, as on another of your clean laps</source>
        <translation>%1（自分の別のクリアラップと同じ程度）</translation>
    </message>
    <message>
        <source>%1, as the book knows it</source>
        <translation>記録帳にある%1</translation>
    </message>
    <message>
        <source>%1, but is read as a person has said</source>
        <translation>%1が、人の指定どおりに読み込みました</translation>
    </message>
    <message>
        <source>%1, longest %2 s at %3 s</source>
        <translation>%1、最長%2 s (%3 sの時点)</translation>
    </message>
    <message>
        <source>%1, my car: %2, lap %3, %4, %5 clean laps</source>
        <translation>%1、自分の車: %2、%3周目、%4、クリアラップ%5周</translation>
    </message>
    <message>
        <source>%1, or chance</source>
        <translation>%1、偶然かも</translation>
    </message>
    <message>
        <source>%1, out at %2 against %3</source>
        <translation>%1、脱出 %2対%3</translation>
    </message>
    <message>
        <source>%1, the largest part in %2 (%3).</source>
        <translation>%1。最大の部分は%2です（%3）。</translation>
    </message>
    <message>
        <source>%1, where you judge it safe: %2.</source>
        <translation>%1は、安全と判断できる場所で: %2。</translation>
    </message>
    <message>
        <source>%1, written %2</source>
        <translation>%1、%2更新</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1。</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 clean laps say little about what repeats</source>
        <translation>%1: クリアラップ%2周では、再現性はほとんどわかりません</translation>
    </message>
    <message>
        <source>%1: %2 laps, %3 to %4 s</source>
        <translation>%1: %2周、%3～%4 s</translation>
    </message>
    <message>
        <source>%1: %2 laps, now %3, best %4, still to be won %5 s</source>
        <translation>%1: %2周、現在 %3、ベスト %4、伸びしろ %5 s</translation>
    </message>
    <message>
        <source>%1: %2 points between %3 and %4</source>
        <translation>%1: %2点、%3～%4</translation>
    </message>
    <message>
        <source>%1: %2 sessions from %3 to %4, between %5 and %6</source>
        <translation>%1: セッション%2件、%3～%4、値は%5～%6</translation>
    </message>
    <message>
        <source>%1: %2, lap %3, %4, %5 clean laps</source>
        <translation>%1: %2、%3周目、%4、クリアラップ%5周</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2。</translation>
    </message>
    <message>
        <source>%1: A %2, B %3%4.</source>
        <translation>%1: A %2、B %3%4。</translation>
    </message>
    <message>
        <source>%1: cannot be told</source>
        <translation>%1: 判定不可</translation>
    </message>
    <message>
        <source>%1: from a file…</source>
        <translation>%1: ファイルから…</translation>
    </message>
    <message>
        <source>%1: how far its map lies off the other did not settle: its laps are placed less surely</source>
        <translation>%1: もう一方とのマップのずれの推定が収束しませんでした。ラップの配置の精度は下がります</translation>
    </message>
    <message>
        <source>%1: how much downforce is best cannot be told: %2.</source>
        <translation>%1: 最適なダウンフォースは判定できません: %2。</translation>
    </message>
    <message>
        <source>%1: lap %2 is not clean</source>
        <translation>%1: %2周目はクリアラップではありません</translation>
    </message>
    <message>
        <source>%1: lap %2 is not clean: %3</source>
        <translation>%1: %2周目はクリアラップではありません: %3</translation>
    </message>
    <message>
        <source>%1: lap %2, %3, %4</source>
        <translation>%1: %2周目, %3, %4</translation>
    </message>
    <message>
        <source>%1: lap time against now from %2 up to %3</source>
        <translation>%1: 現在とのラップタイム差、%2から%3まで</translation>
    </message>
    <message>
        <source>%1: no lap yet</source>
        <translation>%1: ラップ未選択</translation>
    </message>
    <message>
        <source>%1: not used as a speed</source>
        <translation>%1。速度としては使っていません</translation>
    </message>
    <message>
        <source>%1: taken as %2</source>
        <translation>%1。%2と解釈</translation>
    </message>
    <message>
        <source>%1: the uncertainty of this recording is not known</source>
        <translation>%1: この走行データの不確かさは不明です</translation>
    </message>
    <message>
        <source>%1: this book can only be read here. Notes that you write stay in your settings, other changes of the book are not made — to edit it, copy it to a folder that you may write, and open the copy</source>
        <translation>%1: この記録帳はここでは読むことしかできません。書いたメモは設定に残りますが、記録帳のほかの変更は行われません。変更するには、書き込めるフォルダーにコピーして、そのコピーを開いてください</translation>
    </message>
    <message>
        <source>%1: tyre grip %2 to %3, downforce area %4 to %5 m²</source>
        <translation>%1: タイヤグリップ %2～%3、ダウンフォース面積 %4～%5 m²</translation>
    </message>
    <message>
        <source>%1: whether more or less downforce than now is quicker here cannot be told.</source>
        <translation>%1: ここで今よりダウンフォースを増やすのと減らすのとどちらが速いかは判定できません。</translation>
    </message>
    <message>
        <source>%1: which of its laps was the fastest cannot be told: another one is slower by %2 s %3</source>
        <translation>%1: どのラップが最速か判定できません。ほかに%2 s %3しか遅くないラップがあります</translation>
    </message>
    <message>
        <source>%1: who wins time here cannot be told.</source>
        <translation>%1: どちらがタイムを稼いでいるか判定できません。</translation>
    </message>
    <message>
        <source>%1: write a note here</source>
        <translation>%1: ここにメモを書く</translation>
    </message>
    <message>
        <source>%1; %2 brakes %3 later</source>
        <translation>%1。ブレーキは%2が%3奥</translation>
    </message>
    <message>
        <source>%1; %2.</source>
        <translation>%1。%2。</translation>
    </message>
    <message>
        <source>%1; try one step less wing and see what the corners pay.</source>
        <translation>%1。ウイングを1段減らし、コーナーでどれだけ損をするかを見る。</translation>
    </message>
    <message>
        <source>%1; try one step of the wing and come back to it.</source>
        <translation>%1。ウイングを1段変えて試し、元に戻して確かめる。</translation>
    </message>
    <message>
        <source>&amp;%1  %2 — %3</source>
        <translation>&amp;%1  %2 — %3</translation>
    </message>
    <message>
        <source>&amp;About Lapwright</source>
        <translation>Lapwrightについて(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;All of them</source>
        <translation>すべて(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;Bring back</source>
        <translation>戻す(&amp;B)</translation>
    </message>
    <message>
        <source>&amp;Bring it back</source>
        <translation>戻す(&amp;B)</translation>
    </message>
    <message>
        <source>&amp;Change the keys…</source>
        <translation>キーの変更(&amp;C)…</translation>
    </message>
    <message>
        <source>&amp;Check the whole book</source>
        <translation>記録帳全体を検査(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Close this session</source>
        <translation>このセッションを閉じる(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation>比較(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Compare A and B</source>
        <translation>AとBを比較(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Copy as a table	Ctrl+C</source>
        <translation>表としてコピー(&amp;C)	Ctrl+C</translation>
    </message>
    <message>
        <source>&amp;Corner or straight: make it the other</source>
        <translation>区間の種類を変える: コーナー・ストレート(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>暗い(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Debrief</source>
        <translation>振り返り(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Decimal mark</source>
        <translation>小数点(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation>削除(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Dismiss the notices</source>
        <translation>お知らせを閉じる(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>編集(&amp;E)</translation>
    </message>
    <message>
        <source>&amp;Edit…</source>
        <translation>編集(&amp;E)…</translation>
    </message>
    <message>
        <source>&amp;Fold the panel, or open it</source>
        <translation>パネルを折りたたむ・開く(&amp;F)</translation>
    </message>
    <message>
        <source>&amp;Forget the track&apos;s gate and corners</source>
        <translation>コースの計測ラインとコーナーの登録を消す(&amp;F)</translation>
    </message>
    <message>
        <source>&amp;Further channels</source>
        <translation>追加チャンネル(&amp;F)</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>移動(&amp;G)</translation>
    </message>
    <message>
        <source>&amp;Go to a corner, session, lap or command…</source>
        <translation>コーナー、セッション、ラップ、コマンドへ移動(&amp;G)…</translation>
    </message>
    <message>
        <source>&amp;Half</source>
        <translation>1/2(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>ヘルプ(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;Imperial: mph, m</source>
        <translation>英国: mph, m(&amp;I)</translation>
    </message>
    <message>
        <source>&amp;Import recipes…</source>
        <translation>読み込みレシピ(&amp;I)…</translation>
    </message>
    <message>
        <source>&amp;Join each corner with its straight</source>
        <translation>コーナーを次のストレートとまとめる(&amp;J)</translation>
    </message>
    <message>
        <source>&amp;Join the segment with the next</source>
        <translation>区間を次と結合(&amp;J)</translation>
    </message>
    <message>
        <source>&amp;Keep what is predicted…</source>
        <translation>予測を保存(&amp;K)…</translation>
    </message>
    <message>
        <source>&amp;Keys and mouse</source>
        <translation>キーとマウス(&amp;K)</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>明るい(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Merge a friend&apos;s book…</source>
        <translation>友人の記録帳を取り込む(&amp;M)…</translation>
    </message>
    <message>
        <source>&amp;Metric: km/h, m</source>
        <translation>メートル法: km/h, m(&amp;M)</translation>
    </message>
    <message>
        <source>&amp;Multiplied by</source>
        <translation>倍率(&amp;M)</translation>
    </message>
    <message>
        <source>&amp;Name of the segment</source>
        <translation>区間の名前(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Names and date…	F2</source>
        <translation>名前と日付(&amp;N)…	F2</translation>
    </message>
    <message>
        <source>&amp;Names in line</source>
        <translation>列名の行(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Names, date and conditions</source>
        <translation>名前、日付、コンディション(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>新しい値(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Next segment</source>
        <translation>次の区間(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Notes, a line each</source>
        <translation>メモ、1行に1つ(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Of this session</source>
        <translation>このセッションの(&amp;O)</translation>
    </message>
    <message>
        <source>&amp;Open	Return</source>
        <translation>開く(&amp;O)	Return</translation>
    </message>
    <message>
        <source>&amp;Open files…</source>
        <translation>ファイルを開く(&amp;O)…</translation>
    </message>
    <message>
        <source>&amp;Pairing</source>
        <translation>ペア(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Panels of the plots</source>
        <translation>グラフのパネル(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>用紙(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Parted by</source>
        <translation>区切り(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Play and pause</source>
        <translation>再生・一時停止(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Previous segment</source>
        <translation>前の区間(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>終了(&amp;Q)</translation>
    </message>
    <message>
        <source>&amp;Reckon what the change is worth</source>
        <translation>変更の効果を計算(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>やり直す(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Redo %1</source>
        <translation>やり直す(&amp;R) %1</translation>
    </message>
    <message>
        <source>&amp;Removed sessions…</source>
        <translation>外したセッション(&amp;R)…</translation>
    </message>
    <message>
        <source>&amp;Rename</source>
        <translation>名前を変更(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Save what the damaged book holds</source>
        <translation>破損した記録帳の中身を救出(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Season of a track or car…</source>
        <translation>コースや車のシーズン(&amp;S)…</translation>
    </message>
    <message>
        <source>&amp;Session</source>
        <translation>セッション(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Sessions</source>
        <translation>セッション(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Set the date</source>
        <translation>日付を設定(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Sound of A</source>
        <translation>Aの音声(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Stay</source>
        <translation>閉じない(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>中止(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Swap A and B</source>
        <translation>AとBを入れ替え(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Take from a file…</source>
        <translation>ファイルから読み込む(&amp;T)…</translation>
    </message>
    <message>
        <source>&amp;Take out of the book	Del</source>
        <translation>記録帳から外す(&amp;T)	Del</translation>
    </message>
    <message>
        <source>&amp;Taken for</source>
        <translation>解釈(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Track</source>
        <translation>コース(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation>再試行(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;US: mph, ft</source>
        <translation>米国: mph, ft(&amp;U)</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>元に戻す(&amp;U)</translation>
    </message>
    <message>
        <source>&amp;Undo %1</source>
        <translation>元に戻す(&amp;U) %1</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>単位(&amp;U)</translation>
    </message>
    <message>
        <source>&amp;Unite the two</source>
        <translation>1つにまとめる(&amp;U)</translation>
    </message>
    <message>
        <source>&amp;Values fill the view</source>
        <translation>縦軸を自動調整(&amp;V)</translation>
    </message>
    <message>
        <source>&amp;Videos of both beside the traces</source>
        <translation>両車の動画をグラフの横に表示(&amp;V)</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>表示(&amp;V)</translation>
    </message>
    <message>
        <source>&amp;Write to a file…</source>
        <translation>ファイルに書き出す(&amp;W)…</translation>
    </message>
    <message>
        <source>&amp;Write what waits into the book</source>
        <translation>未保存の変更を記録帳に書き込む(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Write what waits into the book (%1)</source>
        <translation>未保存の%1件を記録帳に書き込む(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Written as</source>
        <translation>書式(&amp;W)</translation>
    </message>
    <message>
        <source>(line %1)</source>
        <translation>（%1行目）</translation>
    </message>
    <message>
        <source>(lines %1 and %2 more)</source>
        <translation>（%1行目、ほか%2行）</translation>
    </message>
    <message>
        <source>(lines %1)</source>
        <translation>（%1行目）</translation>
    </message>
    <message>
        <source>+, −, W</source>
        <translation>+、−、W</translation>
    </message>
    <message>
        <source>, </source>
        <translation>、</translation>
    </message>
    <message>
        <source>, at %1 of their pace</source>
        <translation>、%1倍速</translation>
    </message>
    <message>
        <source>, behind A and B as %1</source>
        <translation>、A・Bの背景に%1として表示中</translation>
    </message>
    <message>
        <source>, radius %1</source>
        <translation>、半径 %1</translation>
    </message>
    <message>
        <source>, s</source>
        <translation>, s</translation>
    </message>
    <message>
        <source>, the curve goes from %1 to %2</source>
        <translation>、曲線は%1から%2まで</translation>
    </message>
    <message>
        <source>0 s</source>
        <translation>0 s</translation>
    </message>
    <message>
        <source>0 to 1</source>
        <translation>0～1</translation>
    </message>
    <message>
        <source>1 % more grip</source>
        <translation>グリップ1 %増</translation>
    </message>
    <message>
        <source>1 edit is not in the book</source>
        <translation>記録帳に未保存の変更 1件</translation>
    </message>
    <message>
        <source>1 edit is not in the book yet.</source>
        <translation>記録帳にまだ保存されていない変更が1件あります。</translation>
    </message>
    <message>
        <source>1 field</source>
        <translation>1項目</translation>
    </message>
    <message>
        <source>1 is among those</source>
        <translation>1件</translation>
    </message>
    <message>
        <source>1 kept pairing</source>
        <translation>保存したペア1件</translation>
    </message>
    <message>
        <source>1 new session</source>
        <translation>新しいセッション1件</translation>
    </message>
    <message>
        <source>1 note</source>
        <translation>メモ1件</translation>
    </message>
    <message>
        <source>1 pairing</source>
        <translation>ペア1件</translation>
    </message>
    <message>
        <source>1 removed session can be brought back.</source>
        <translation>外したセッション1件を戻せます。</translation>
    </message>
    <message>
        <source>1 session</source>
        <translation>セッション1件</translation>
    </message>
    <message>
        <source>1 was known already</source>
        <translation>既知1件</translation>
    </message>
    <message>
        <source>10 % less drag</source>
        <translation>空気抵抗10 %減</translation>
    </message>
    <message>
        <source>10 % more downforce</source>
        <translation>ダウンフォース10 %増</translation>
    </message>
    <message>
        <source>10 kW more power</source>
        <translation>パワー10 kW増</translation>
    </message>
    <message>
        <source>10 kg less mass</source>
        <translation>車重10 kg減</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>95 % 範囲</translation>
    </message>
    <message>
        <source>; </source>
        <translation>。</translation>
    </message>
    <message>
        <source>; 95 % band</source>
        <translation>; 95 % 帯</translation>
    </message>
    <message>
        <source>; grip and downforce alone %1, because what either driver keeps in hand is not seen</source>
        <translation>。グリップとダウンフォースだけでは%1です。各ドライバーの余力は見えないためです</translation>
    </message>
    <message>
        <source>; how much of it is %1 cannot be told.</source>
        <translation>。そのうち%1がどれだけかは判定できません。</translation>
    </message>
    <message>
        <source>; no video of %1</source>
        <translation>。%1の動画はありません</translation>
    </message>
    <message>
        <source>; of it %1 %2.</source>
        <translation>。うち%1は%2です。</translation>
    </message>
    <message>
        <source>; speeds and distances are as its wheels read them, all alike off by up to %1 %</source>
        <translation>。速度と距離は車輪で測ったもので、一様に最大%1 %ずれることがあります</translation>
    </message>
    <message>
        <source>; the video does not show this moment</source>
        <translation>。動画にこの瞬間は映っていません</translation>
    </message>
    <message>
        <source>; what %1 is worth %2</source>
        <translation>; %1の効果 %2</translation>
    </message>
    <message>
        <source>? doubtful</source>
        <translation>? 不確か</translation>
    </message>
    <message>
        <source>A %1 inside</source>
        <translation>Aが%1内側</translation>
    </message>
    <message>
        <source>A %1 left</source>
        <translation>Aが%1左</translation>
    </message>
    <message>
        <source>A %1 outside</source>
        <translation>Aが%1外側</translation>
    </message>
    <message>
        <source>A %1 right</source>
        <translation>Aが%1右</translation>
    </message>
    <message>
        <source>A &amp;quarter</source>
        <translation>1/4(&amp;Q)</translation>
    </message>
    <message>
        <source>A and B are level</source>
        <translation>AとBは互角</translation>
    </message>
    <message>
        <source>A car from all its sessions</source>
        <translation>全セッションから見た車</translation>
    </message>
    <message>
        <source>A change of downforce alone leans on how grip and downforce share the cornering, which these laps hardly tell: its interval says how much.</source>
        <translation>ダウンフォースだけを変えた結果は、旋回をグリップとダウンフォースがどう分け合うかに左右されますが、このラップからはほとんどわかりません。その度合いは範囲の広さに表れています。</translation>
    </message>
    <message>
        <source>A few letters of a channel&apos;s name</source>
        <translation>チャンネル名の一部</translation>
    </message>
    <message>
        <source>A few letters of a command or a key</source>
        <translation>コマンド名かキーの一部</translation>
    </message>
    <message>
        <source>A few letters of its name</source>
        <translation>名前の一部</translation>
    </message>
    <message>
        <source>A friend&apos;s book</source>
        <translation>友人の記録帳</translation>
    </message>
    <message>
        <source>A is quicker in %1 of lap pairs.</source>
        <translation>Aが速いのはラップの組み合わせの%1です。</translation>
    </message>
    <message>
        <source>A mark for each flying lap, hollow where it is not clean; the line runs through the later half of the laps, with the 95 % interval of its end.</source>
        <translation>点は計測ラップ、白抜きはクリアラップ以外。線は後半のラップを通り、終点に95 % 範囲を付けています。</translation>
    </message>
    <message>
        <source>A m² of downforce &amp;costs, in m² of drag:</source>
        <translation>ダウンフォース1 m²の代償となる空気抵抗, m² (&amp;C):</translation>
    </message>
    <message>
        <source>A solid, B dashed</source>
        <translation>A 実線、B 破線</translation>
    </message>
    <message>
        <source>A wins time</source>
        <translation>Aが稼ぐ</translation>
    </message>
    <message>
        <source>About Lapwright</source>
        <translation>Lapwrightについて</translation>
    </message>
    <message>
        <source>Acceleration at full throttle and fitted curve: A solid, B dashed</source>
        <translation>全開での加速Gと当てはめた曲線: A 実線、B 破線</translation>
    </message>
    <message>
        <source>Aero, downforce and drag together: %1 (%2, %3).</source>
        <translation>空力、ダウンフォースと空気抵抗の合計: %1（%2、%3）。</translation>
    </message>
    <message>
        <source>Air pressure at the track</source>
        <translation>コースの気圧</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation>気温</translation>
    </message>
    <message>
        <source>All %1…</source>
        <translation>全%1件…</translation>
    </message>
    <message>
        <source>All cars</source>
        <translation>すべての車</translation>
    </message>
    <message>
        <source>All clean laps, quick is left; the ring is this lap</source>
        <translation>全クリアラップ（左ほど速い）。丸囲みはこのラップ</translation>
    </message>
    <message>
        <source>All segments</source>
        <translation>全区間</translation>
    </message>
    <message>
        <source>All segments on a &amp;second page</source>
        <translation>全区間を2ページ目に(&amp;S)</translation>
    </message>
    <message>
        <source>All sessions of this %1 get the new name.</source>
        <translation>この%1のすべてのセッションが新しい名前になります。</translation>
    </message>
    <message>
        <source>All usual keys</source>
        <translation>すべて標準に戻す</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>標高</translation>
    </message>
    <message>
        <source>Another name for its driver, car or track in all sessions, or its date (F2)</source>
        <translation>ドライバー、車、コースの名前を全セッションで変える、または日付を変える (F2)</translation>
    </message>
    <message>
        <source>Any car</source>
        <translation>すべての車</translation>
    </message>
    <message>
        <source>Any driver</source>
        <translation>全ドライバー</translation>
    </message>
    <message>
        <source>Any track</source>
        <translation>全コース</translation>
    </message>
    <message>
        <source>Any tyre</source>
        <translation>全タイヤ</translation>
    </message>
    <message>
        <source>Apr</source>
        <translation>4月</translation>
    </message>
    <message>
        <source>As it &amp;was</source>
        <translation>実際の速さ(&amp;W)</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>変更なし</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>システムと同じ(&amp;S)</translation>
    </message>
    <message>
        <source>As the pro&amp;gram guesses</source>
        <translation>自動判定(&amp;G)</translation>
    </message>
    <message>
        <source>At most %1 laps can be seen behind A and B: take one of them away first.</source>
        <translation>A・Bの背景に表示できるのは%1ラップまでです。先にどれか1つを外してください。</translation>
    </message>
    <message>
        <source>Aug</source>
        <translation>8月</translation>
    </message>
    <message>
        <source>B</source>
        <translation>B</translation>
    </message>
    <message>
        <source>B wins time</source>
        <translation>Bが稼ぐ</translation>
    </message>
    <message>
        <source>Back to the open sessions</source>
        <translation>開いているセッションに戻る</translation>
    </message>
    <message>
        <source>Best (lap)</source>
        <translation>ベスト (周)</translation>
    </message>
    <message>
        <source>Best lap</source>
        <translation>ベスト</translation>
    </message>
    <message>
        <source>Both cars are driven with more and with less of it…</source>
        <translation>両車をダウンフォースを増減して走らせています…</translation>
    </message>
    <message>
        <source>Both driven &amp;lines close up, and how far apart</source>
        <translation>両車の走行ラインの拡大図と間隔(&amp;X)</translation>
    </message>
    <message>
        <source>Both laps are of the same car in one session: what differs is the driving and chance.</source>
        <translation>両方とも同じ車の同じセッションのラップです。違いは走らせ方と偶然によるものです。</translation>
    </message>
    <message>
        <source>Both let &amp;go at the chosen segment&apos;s start</source>
        <translation>選んだ区間の始めで同時にスタート(&amp;G)</translation>
    </message>
    <message>
        <source>Braking point</source>
        <translation>ブレーキ開始</translation>
    </message>
    <message>
        <source>Brought back.</source>
        <translation>戻しました。</translation>
    </message>
    <message>
        <source>C&amp;hoose channels, and sets of them…</source>
        <translation>チャンネルとその組を選ぶ(&amp;H)…</translation>
    </message>
    <message>
        <source>Ca&amp;uses</source>
        <translation>要因(&amp;U)</translation>
    </message>
    <message>
        <source>Car</source>
        <translation>車</translation>
    </message>
    <message>
        <source>Car %1: %2, %3 a lap.

How will the setup sheet say it once it is driven? Write it as
wing angle=7 deg; splitter=46 mm, or leave it empty and name the session then.</source>
        <translation>車%1：%2、1周で%3。

走ったとき、セッティングシートにはどう書かれますか？次のように書きます：
wing angle=7 deg; splitter=46 mm。空のままにして、あとでセッションを指定することもできます。</translation>
    </message>
    <message>
        <source>Car: %1</source>
        <translation>車: %1</translation>
    </message>
    <message>
        <source>Causes, whole lap</source>
        <translation>要因、ラップ全体</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>変更</translation>
    </message>
    <message>
        <source>Change front and rear together so that the balance stays, and feel it out before a quick lap.</source>
        <translation>バランスが変わらないよう前後を一緒に変え、アタックの前に感触を確かめてください。</translation>
    </message>
    <message>
        <source>Change its names or date</source>
        <translation>名前や日付を変える</translation>
    </message>
    <message>
        <source>Change the keys</source>
        <translation>キーの変更</translation>
    </message>
    <message>
        <source>Changed. Files that are open keep what they were read as until they are opened again.</source>
        <translation>変更しました。開いているファイルは、開き直すまで前の読み方のままです。</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation>チャンネル</translation>
    </message>
    <message>
        <source>Channel one place &amp;down</source>
        <translation>チャンネルを1つ下へ(&amp;D)</translation>
    </message>
    <message>
        <source>Channel one place &amp;up</source>
        <translation>チャンネルを1つ上へ(&amp;U)</translation>
    </message>
    <message>
        <source>Channels; Space shows or hides one</source>
        <translation>チャンネル。Spaceで表示・非表示</translation>
    </message>
    <message>
        <source>Choose a lap</source>
        <translation>ラップを選ぶ</translation>
    </message>
    <message>
        <source>Choose a lap of the session first: click it, or go there by Left and Right.</source>
        <translation>先にセッションのラップを選んでください。クリックするか、←と→で移動します。</translation>
    </message>
    <message>
        <source>Choose a row or a stretch</source>
        <translation>行か区間を選んでください</translation>
    </message>
    <message>
        <source>Choose a segment</source>
        <translation>区間を選ぶ</translation>
    </message>
    <message>
        <source>Choose at least one baseline and one session with the change.</source>
        <translation>基準のセッションと変更ありのセッションを少なくとも1つずつ選んでください。</translation>
    </message>
    <message>
        <source>Choose the video of %1</source>
        <translation>%1の動画を選ぶ</translation>
    </message>
    <message>
        <source>Chosen segment</source>
        <translation>選んだ区間</translation>
    </message>
    <message>
        <source>Clean laps</source>
        <translation>クリアラップ</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>閉じる</translation>
    </message>
    <message>
        <source>Close &amp;without them</source>
        <translation>保存せずに閉じる(&amp;W)</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>列</translation>
    </message>
    <message>
        <source>Columns of %1</source>
        <translation>%1の列</translation>
    </message>
    <message>
        <source>Columns of the file</source>
        <translation>ファイルの列</translation>
    </message>
    <message>
        <source>Columns of this session&apos;s &amp;file…</source>
        <translation>このセッションのファイルの列(&amp;K)…</translation>
    </message>
    <message>
        <source>Columns…</source>
        <translation>列…</translation>
    </message>
    <message>
        <source>Command</source>
        <translation>コマンド</translation>
    </message>
    <message>
        <source>Commands and their keys</source>
        <translation>コマンドとそのキー</translation>
    </message>
    <message>
        <source>Commands or keys with these letters</source>
        <translation>この文字を含むコマンドやキー</translation>
    </message>
    <message>
        <source>Compare A and B</source>
        <translation>AとBを比較</translation>
    </message>
    <message>
        <source>Compared</source>
        <translation>比較日時</translation>
    </message>
    <message>
        <source>Compared last</source>
        <translation>最近の比較</translation>
    </message>
    <message>
        <source>Compares two laps of two logger files, corner by corner, and says how sure it is.</source>
        <translation>2つのロガーファイルのラップ2本をコーナーごとに比べ、その差がどこまで確かかを示します。</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>コンディション</translation>
    </message>
    <message>
        <source>Copy as a &amp;table</source>
        <translation>表としてコピー(&amp;T)</translation>
    </message>
    <message>
        <source>Copy as a p&amp;icture</source>
        <translation>画像としてコピー(&amp;I)</translation>
    </message>
    <message>
        <source>Corner %1</source>
        <translation>コーナー%1</translation>
    </message>
    <message>
        <source>Corner of the stills</source>
        <translation>静止画のコーナー</translation>
    </message>
    <message>
        <source>Cornering acceleration against speed</source>
        <translation>速度に対する横G</translation>
    </message>
    <message>
        <source>Cornering acceleration and fitted limit: A filled, B hollow; triangle: flat out</source>
        <translation>横Gと当てはめた限界線: A 塗り、B 白抜き、三角は全開</translation>
    </message>
    <message>
        <source>Cornering as driven (tyres, downforce and how much of them the drivers use): %1.</source>
        <translation>実走の旋回（タイヤ、ダウンフォースと、ドライバーがそれを使う度合い）: %1。</translation>
    </message>
    <message>
        <source>Cornering as driven, which is tyres, downforce and how much of them the drivers use, is probably worth %1 a lap to %2, most %3%4.</source>
        <translation>実走の旋回（タイヤ、ダウンフォースと、ドライバーがそれを使う度合い）は%3、おそらく%2に1周あたり%1有利です%4。</translation>
    </message>
    <message>
        <source>Cornering as driven, which is tyres, downforce and how much of them the drivers use, is worth %1 a lap to %2, most %3%4.</source>
        <translation>実走の旋回（タイヤ、ダウンフォースと、ドライバーがそれを使う度合い）は%3、%2に1周あたり%1有利です%4。</translation>
    </message>
    <message>
        <source>Corners</source>
        <translation>コーナー</translation>
    </message>
    <message>
        <source>Corners are shown with their straights: J shows them apart, to be named.</source>
        <translation>コーナーはストレートとまとめて表示されています。Jで分けると名前を付けられます。</translation>
    </message>
    <message>
        <source>Corners, and straights that matter</source>
        <translation>コーナーと差の出るストレート</translation>
    </message>
    <message>
        <source>Correct what is wrong; the answer is kept for all files of this shape.</source>
        <translation>違っているところを直してください。答えは、この形のすべてのファイル用に保存されます。</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>推移</translation>
    </message>
    <message>
        <source>Course of each segment</source>
        <translation>各区間の推移</translation>
    </message>
    <message>
        <source>Ctrl and wheel</source>
        <translation>Ctrl+ホイール</translation>
    </message>
    <message>
        <source>Cursor</source>
        <translation>カーソル</translation>
    </message>
    <message>
        <source>Cursor &amp;back</source>
        <translation>カーソルを後ろへ(&amp;B)</translation>
    </message>
    <message>
        <source>Cursor &amp;far on</source>
        <translation>カーソルを大きく先へ(&amp;F)</translation>
    </message>
    <message>
        <source>Cursor &amp;on</source>
        <translation>カーソルを先へ(&amp;O)</translation>
    </message>
    <message>
        <source>Cursor far b&amp;ack</source>
        <translation>カーソルを大きく後ろへ(&amp;A)</translation>
    </message>
    <message>
        <source>Cursor to the &amp;end of the lap</source>
        <translation>カーソルをラップの終わりへ(&amp;E)</translation>
    </message>
    <message>
        <source>Cursor to the &amp;start of the lap</source>
        <translation>カーソルをラップの始めへ(&amp;S)</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>日付</translation>
    </message>
    <message>
        <source>Date in UTC, as 2026-05-16 10:20</source>
        <translation>日時 (UTC)、例 2026-05-16 10:20</translation>
    </message>
    <message>
        <source>Dec</source>
        <translation>12月</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Delete</translation>
    </message>
    <message>
        <source>Deleted.</source>
        <translation>削除しました。</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>閉じる</translation>
    </message>
    <message>
        <source>Distance along the track</source>
        <translation>コース上の距離</translation>
    </message>
    <message>
        <source>Down, Up in the first row</source>
        <translation>↓、先頭行で↑</translation>
    </message>
    <message>
        <source>Downforce area if known (0.5 ±0.1), m²</source>
        <translation>ダウンフォース面積、わかれば (0.5 ±0.1), m²</translation>
    </message>
    <message>
        <source>Drag area if known (0.92 ±0.05), m²</source>
        <translation>空気抵抗面積、わかれば (0.92 ±0.05), m²</translation>
    </message>
    <message>
        <source>Drag area that a square metre of downforce area costs</source>
        <translation>ダウンフォース面積1 m²の代償となる空気抵抗面積</translation>
    </message>
    <message>
        <source>Drive without the change, with it, and without it again: only so can the change be told from tyres that fade and a track that grips more. Sessions stand in the order in which they were driven.</source>
        <translation>変更なし、変更あり、もう一度変更なしの順で走ってください。そうしてはじめて、変更の効果をタイヤのタレや路面グリップの向上と区別できます。セッションは走った順に並んでいます。</translation>
    </message>
    <message>
        <source>Driven</source>
        <translation>走行日</translation>
    </message>
    <message>
        <source>Driven differently</source>
        <translation>走らせ方の違い</translation>
    </message>
    <message>
        <source>Driven last</source>
        <translation>最近の走行</translation>
    </message>
    <message>
        <source>Driver</source>
        <translation>ドライバー</translation>
    </message>
    <message>
        <source>Driver and rest</source>
        <translation>ドライバー他</translation>
    </message>
    <message>
        <source>Drivers, %1</source>
        <translation>ドライバー、%1</translation>
    </message>
    <message>
        <source>Drivers, whole lap</source>
        <translation>ドライバー、ラップ全体</translation>
    </message>
    <message>
        <source>Driving acceleration against speed</source>
        <translation>速度に対する加速G</translation>
    </message>
    <message>
        <source>Drop logger files anywhere in this window, or open them. Files are read and never changed.</source>
        <translation>ロガーファイルをこのウィンドウのどこかにドロップするか、開いてください。ファイルは読むだけで、変更しません。</translation>
    </message>
    <message>
        <source>Drop the logger files of two drivers here</source>
        <translation>2人のドライバーのロガーファイルをここにドロップ</translation>
    </message>
    <message>
        <source>Each number is seconds, with the letter and in the colour of whoever it favours; a row adds up to what was measured. Filled: surely so. Dotted: may be chance. Of it: a part of the column before, bare where that is known better.</source>
        <translation>数値はすべて秒で、得をした側の文字と色で示します。各行の合計が実測値です。塗り: 確実。点線の枠: 偶然かもしれません。「うち」: 左の列の内訳。左の列のほうが確かなところでは枠も塗りも付けません。</translation>
    </message>
    <message>
        <source>Engine used: A %1, B %2</source>
        <translation>エンジン使用率: A %1、B %2</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>進入</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
    <message>
        <source>Estimates from recorded data; intervals are 95 %. Motor sport is dangerous: the event&apos;s rules, scrutineering and licensed practice come first, and nothing here asks anyone to drive faster than they judge safe.</source>
        <translation>記録されたデータからの推定値で、範囲は95 %です。モータースポーツは危険を伴います。大会規則、車検、ライセンスに基づく走行が最優先であり、ここに示す内容は、安全と判断する以上の速さで走ることを求めるものではありません。</translation>
    </message>
    <message>
        <source>Every segment</source>
        <translation>全区間の詳細</translation>
    </message>
    <message>
        <source>Every session of %1 is read and put together: %2 %%3</source>
        <translation>%1の全セッションを読み、まとめています: %2 %%3</translation>
    </message>
    <message>
        <source>Exit</source>
        <translation>脱出</translation>
    </message>
    <message>
        <source>F2</source>
        <translation>F2</translation>
    </message>
    <message>
        <source>Fastest %1 against %2</source>
        <translation>最高速 %1対%2</translation>
    </message>
    <message>
        <source>Feb</source>
        <translation>2月</translation>
    </message>
    <message>
        <source>Figures of a car</source>
        <translation>車の特性値</translation>
    </message>
    <message>
        <source>File</source>
        <translation>ファイル</translation>
    </message>
    <message>
        <source>Finding %1: show it on the Compare page</source>
        <translation>所見%1: 「比較」ページで表示</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>所見</translation>
    </message>
    <message>
        <source>First cells</source>
        <translation>先頭の値</translation>
    </message>
    <message>
        <source>First day, as 2026-05-16</source>
        <translation>最初の日、例 2026-05-16</translation>
    </message>
    <message>
        <source>First rows</source>
        <translation>先頭の行</translation>
    </message>
    <message>
        <source>Fold a panel, or open it</source>
        <translation>パネルを折りたたむ・開く</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>フォルダー</translation>
    </message>
    <message>
        <source>Forget it</source>
        <translation>登録を消す</translation>
    </message>
    <message>
        <source>Free software under the GNU General Public License, version 3 or later (GPL-3.0-or-later); it comes without any warranty.</source>
        <translation>GNU General Public License バージョン3以降（GPL-3.0-or-later）に基づく自由ソフトウェアです。いかなる保証もありません。</translation>
    </message>
    <message>
        <source>From lap to lap, s</source>
        <translation>1周ごとの変化, s</translation>
    </message>
    <message>
        <source>From the words to the list, and back</source>
        <translation>検索語から一覧へ、一覧から検索語へ</translation>
    </message>
    <message>
        <source>Front spring rate at the wheel, N/mm</source>
        <translation>フロントのホイールレート, N/mm</translation>
    </message>
    <message>
        <source>Full t&amp;hrottle again</source>
        <translation>全開復帰(&amp;H)</translation>
    </message>
    <message>
        <source>Full throttle</source>
        <translation>全開</translation>
    </message>
    <message>
        <source>Further channels</source>
        <translation>追加チャンネル</translation>
    </message>
    <message>
        <source>Further channels: &amp;back</source>
        <translation>前の追加チャンネル(&amp;B)</translation>
    </message>
    <message>
        <source>Further channels: &amp;on</source>
        <translation>次の追加チャンネル(&amp;O)</translation>
    </message>
    <message>
        <source>Further items of %1</source>
        <translation>%1のその他の項目</translation>
    </message>
    <message>
        <source>Further items,
one a line: name: value</source>
        <translation>その他の項目、
1行に1つ、名前: 値</translation>
    </message>
    <message>
        <source>Gap with 95 % band, s: above zero A is ahead</source>
        <translation>タイム差と95 % 帯, s: 0より上はAが先行</translation>
    </message>
    <message>
        <source>Gap, s: above zero A is ahead</source>
        <translation>タイム差, s: 0より上はAが先行</translation>
    </message>
    <message>
        <source>Gaps</source>
        <translation>欠落</translation>
    </message>
    <message>
        <source>Getting quicker by %1.</source>
        <translation>%1ずつ速くなっています。</translation>
    </message>
    <message>
        <source>Getting slower by %1.</source>
        <translation>%1ずつ遅くなっています。</translation>
    </message>
    <message>
        <source>Give it this key</source>
        <translation>このキーを割り当て</translation>
    </message>
    <message>
        <source>Go on to further channels; where all is in view, show less or more</source>
        <translation>次の追加チャンネルへ。すべて見えていれば拡大・縮小</translation>
    </message>
    <message>
        <source>Go to a corner, session, lap or command</source>
        <translation>コーナー、セッション、ラップ、コマンドへ移動</translation>
    </message>
    <message>
        <source>Go to another session</source>
        <translation>別のセッションへ</translation>
    </message>
    <message>
        <source>Go to…</source>
        <translation>移動…</translation>
    </message>
    <message>
        <source>Grip and downforce that the laps allow: A solid, B dashed</source>
        <translation>ラップと整合するグリップとダウンフォース: A 実線、B 破線</translation>
    </message>
    <message>
        <source>Grip as used: A %1, B %2.</source>
        <translation>使用グリップ: A %1、B %2。</translation>
    </message>
    <message>
        <source>Guessed</source>
        <translation>推定</translation>
    </message>
    <message>
        <source>HTML files (*.html *.htm)</source>
        <translation>HTMLファイル (*.html *.htm)</translation>
    </message>
    <message>
        <source>How far each clean lap is behind the fastest of the open sessions, with the 95 % margin of its time; a click on &quot;lap&quot; or &quot;time&quot; sorts</source>
        <translation>各クリアラップが、開いているセッション中の最速からどれだけ遅れているか。タイムの95 % 誤差幅つき。「周回」か「時間」のクリックで並べ替え</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>進み具合</translation>
    </message>
    <message>
        <source>How much &amp;wing…</source>
        <translation>ウイングの量(&amp;W)…</translation>
    </message>
    <message>
        <source>How much wing</source>
        <translation>ウイングの量</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>確度</translation>
    </message>
    <message>
        <source>How sure (one standard deviation)</source>
        <translation>不確かさ (標準偏差1つ分)</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>湿度</translation>
    </message>
    <message>
        <source>Import recipe</source>
        <translation>読み込みレシピ</translation>
    </message>
    <message>
        <source>Import recipes</source>
        <translation>読み込みレシピ</translation>
    </message>
    <message>
        <source>Import recipes (*.recipe.json *.json)</source>
        <translation>読み込みレシピ (*.recipe.json *.json)</translation>
    </message>
    <message>
        <source>Import recipes (*.recipe.json *.json);;All files (*)</source>
        <translation>読み込みレシピ (*.recipe.json *.json);;すべてのファイル (*)</translation>
    </message>
    <message>
        <source>In full…</source>
        <translation>全文…</translation>
    </message>
    <message>
        <source>Is this the trial that you mean? %1. Press the button again to reckon it all the same.</source>
        <translation>意図したテストはこれですか? %1。このまま計算するには、もう一度ボタンを押してください。</translation>
    </message>
    <message>
        <source>It is &amp;right</source>
        <translation>これで正しい(&amp;R)</translation>
    </message>
    <message>
        <source>It is spread over the lap: no single segment stands out.</source>
        <translation>差はラップ全体に広がっていて、目立つ区間はありません。</translation>
    </message>
    <message>
        <source>It sends nothing anywhere and changes no source file.</source>
        <translation>どこへもデータを送信せず、元のファイルも変更しません。</translation>
    </message>
    <message>
        <source>Its usual key</source>
        <translation>標準のキーに戻す</translation>
    </message>
    <message>
        <source>Jan</source>
        <translation>1月</translation>
    </message>
    <message>
        <source>Jul</source>
        <translation>7月</translation>
    </message>
    <message>
        <source>Jun</source>
        <translation>6月</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>保存</translation>
    </message>
    <message>
        <source>Keep a prediction</source>
        <translation>予測を保存</translation>
    </message>
    <message>
        <source>Keep for &amp;A…</source>
        <translation>Aの予測を保存(&amp;A)…</translation>
    </message>
    <message>
        <source>Keep for &amp;B…</source>
        <translation>Bの予測を保存(&amp;B)…</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>残す</translation>
    </message>
    <message>
        <source>Keep this recipe</source>
        <translation>レシピを保存</translation>
    </message>
    <message>
        <source>Keep what is predicted for the quickest in the book, to be held against what happens</source>
        <translation>最速の設定での予測を記録帳に保存し、実際の結果と比べます</translation>
    </message>
    <message>
        <source>Keep what is predicted in the book, to be held against what happens</source>
        <translation>予測を記録帳に保存し、実際の結果と比べます</translation>
    </message>
    <message>
        <source>Keep…</source>
        <translation>保存…</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>保存日時</translation>
    </message>
    <message>
        <source>Kept &amp;pairings…</source>
        <translation>保存したペア(&amp;P)…</translation>
    </message>
    <message>
        <source>Kept as rec&amp;ipe</source>
        <translation>レシピ名(&amp;I)</translation>
    </message>
    <message>
        <source>Kept pairings</source>
        <translation>保存したペア</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>キー</translation>
    </message>
    <message>
        <source>Keys and mouse</source>
        <translation>キーとマウス</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>言語(&amp;G)</translation>
    </message>
    <message>
        <source>Lap</source>
        <translation>ラップ</translation>
    </message>
    <message>
        <source>Lap %1</source>
        <translation>%1周目</translation>
    </message>
    <message>
        <source>Lap %1 counts, because</source>
        <translation>%1周目を採用、理由は</translation>
    </message>
    <message>
        <source>Lap %1 is set aside, because</source>
        <translation>%1周目を除外、理由は</translation>
    </message>
    <message>
        <source>Lap A</source>
        <translation>ラップA</translation>
    </message>
    <message>
        <source>Lap B</source>
        <translation>ラップB</translation>
    </message>
    <message>
        <source>Lap time over more or less downforce</source>
        <translation>ダウンフォースの増減に対するラップタイム</translation>
    </message>
    <message>
        <source>Lap times stay level.</source>
        <translation>ラップタイムは横ばいです。</translation>
    </message>
    <message>
        <source>Laps by time, the &amp;fastest first</source>
        <translation>ラップを速い順に並べる(&amp;F)</translation>
    </message>
    <message>
        <source>Laps of a track or figures of a car</source>
        <translation>コースのラップか車の特性値か</translation>
    </message>
    <message>
        <source>Laps on a track</source>
        <translation>コースのラップ</translation>
    </message>
    <message>
        <source>Laps on the Sessions page</source>
        <translation>「セッション」ページのラップ</translation>
    </message>
    <message>
        <source>Lapwright %1</source>
        <translation>Lapwright %1</translation>
    </message>
    <message>
        <source>Last day, as 2026-05-16</source>
        <translation>最後の日、例 2026-05-16</translation>
    </message>
    <message>
        <source>Lateral, from motion</source>
        <translation>横G（算出）</translation>
    </message>
    <message>
        <source>Learnin&amp;g: laps and corners over the session…</source>
        <translation>習熟: セッション中のラップとコーナー(&amp;G)…</translation>
    </message>
    <message>
        <source>Learning has stopped in %1.</source>
        <translation>%1では習熟が止まっています。</translation>
    </message>
    <message>
        <source>Learning: %1</source>
        <translation>習熟: %1</translation>
    </message>
    <message>
        <source>Leave them closed</source>
        <translation>閉じたままにする</translation>
    </message>
    <message>
        <source>Leaves it at %1 against %2</source>
        <translation>脱出 %1対%2</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>除外</translation>
    </message>
    <message>
        <source>Left, Right, Tab</source>
        <translation>←、→、Tab</translation>
    </message>
    <message>
        <source>Less, more, all of the season</source>
        <translation>シーズンの拡大、縮小、全体</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>アクセルオフ</translation>
    </message>
    <message>
        <source>Line and corners of %1 come from %2.</source>
        <translation>%1の計測ラインとコーナーは%2のものです。</translation>
    </message>
    <message>
        <source>Line%1: above zero A is further left</source>
        <translation>ライン%1: 0より上はAが左寄り</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>ライン</translation>
    </message>
    <message>
        <source>Longitudinal, from motion</source>
        <translation>前後G（算出）</translation>
    </message>
    <message>
        <source>Loo&amp;k</source>
        <translation>外観(&amp;K)</translation>
    </message>
    <message>
        <source>Made from %1 (A) and %2 (B), grid %3 m. Lapwright %4.</source>
        <translation>%1（A）と%2（B）から作成、計算間隔%3 m。Lapwright %4。</translation>
    </message>
    <message>
        <source>Make a panel taller or lower</source>
        <translation>パネルの高さを変える</translation>
    </message>
    <message>
        <source>Make this lap &amp;A</source>
        <translation>このラップをAに選ぶ(&amp;A)</translation>
    </message>
    <message>
        <source>Make this lap &amp;B</source>
        <translation>このラップをBに選ぶ(&amp;B)</translation>
    </message>
    <message>
        <source>Map of the track, coloured by who wins time</source>
        <translation>コースマップ、タイムを稼いだ側で色分け</translation>
    </message>
    <message>
        <source>Mar</source>
        <translation>3月</translation>
    </message>
    <message>
        <source>Mass with driver and fuel</source>
        <translation>車重 (ドライバー・燃料込み)</translation>
    </message>
    <message>
        <source>May</source>
        <translation>5月</translation>
    </message>
    <message>
        <source>Median</source>
        <translation>中央値</translation>
    </message>
    <message>
        <source>Mended</source>
        <translation>修正</translation>
    </message>
    <message>
        <source>Most in %1.</source>
        <translation>主に%1。</translation>
    </message>
    <message>
        <source>Most is still to be won in %1.</source>
        <translation>伸びしろが大きいのは%1です。</translation>
    </message>
    <message>
        <source>Most of it is %1: %2 gains %3 there</source>
        <translation>大半は%1で、%2がそこで%3稼いでいます</translation>
    </message>
    <message>
        <source>Most of it is probably %1: %2 gains %3 there</source>
        <translation>大半はおそらく%1で、%2がそこで%3稼いでいます</translation>
    </message>
    <message>
        <source>Motor sport is dangerous. The event&apos;s rules, scrutineering and licensed practice come first, and nothing here is an instruction to drive faster than you judge safe.</source>
        <translation>モータースポーツは危険を伴います。大会規則、車検、ライセンスに基づく走行が最優先です。ここに示す内容は、ご自身が安全と判断する以上の速さで走ることを指示するものではありません。</translation>
    </message>
    <message>
        <source>Mouse on the plots</source>
        <translation>グラフ上のマウス</translation>
    </message>
    <message>
        <source>Move a control to see the predicted lap.</source>
        <translation>つまみを動かすと予測ラップが出ます。</translation>
    </message>
    <message>
        <source>Move a further channel</source>
        <translation>追加チャンネルを移動</translation>
    </message>
    <message>
        <source>Move an end, or the timing line</source>
        <translation>区間の端や計測ラインを動かす</translation>
    </message>
    <message>
        <source>Multiplied by: a number that is not 0.</source>
        <translation>倍率: 0以外の数を入れてください。</translation>
    </message>
    <message>
        <source>Name of a channel</source>
        <translation>チャンネル名</translation>
    </message>
    <message>
        <source>Name of a corner, session, lap or command</source>
        <translation>コーナー、セッション、ラップ、コマンドの名前</translation>
    </message>
    <message>
        <source>Names and date</source>
        <translation>名前と日付</translation>
    </message>
    <message>
        <source>Names, date…</source>
        <translation>名前・日付…</translation>
    </message>
    <message>
        <source>Ne&amp;xt question</source>
        <translation>次の質問(&amp;X)</translation>
    </message>
    <message>
        <source>New files, not opened yet</source>
        <translation>新しいファイル、未読</translation>
    </message>
    <message>
        <source>New files: %1</source>
        <translation>新ファイル: %1</translation>
    </message>
    <message>
        <source>New key of the chosen command</source>
        <translation>選んだコマンドの新しいキー</translation>
    </message>
    <message>
        <source>New name or date</source>
        <translation>新しい名前か日付</translation>
    </message>
    <message>
        <source>Nex&amp;t units</source>
        <translation>次の単位(&amp;T)</translation>
    </message>
    <message>
        <source>No key</source>
        <translation>キーなし</translation>
    </message>
    <message>
        <source>No pairing yet: compare two laps, and what came out is kept here.</source>
        <translation>ペアはまだありません。ラップ2本を比較すると、結果がここに残ります。</translation>
    </message>
    <message>
        <source>No prediction has been judged yet.</source>
        <translation>判定した予測はまだありません。</translation>
    </message>
    <message>
        <source>No prediction yet: keep what What if or How much wing predicts, and once it was driven it is held against what happened here.</source>
        <translation>予測はまだありません。「試算」や「ウイングの量」の予測を保存すると、走行後にここで実際の結果と比べます。</translation>
    </message>
    <message>
        <source>No segment chosen</source>
        <translation>区間の選択なし</translation>
    </message>
    <message>
        <source>No session has all of these words.</source>
        <translation>これらの言葉をすべて含むセッションはありません。</translation>
    </message>
    <message>
        <source>No session is all of this.</source>
        <translation>この条件をすべて満たすセッションはありません。</translation>
    </message>
    <message>
        <source>No session of the book says its car; the name comes with the logger&apos;s file.</source>
        <translation>記録帳には、車のわかるセッションがありません。車名はロガーのファイルから取られます。</translation>
    </message>
    <message>
        <source>No session of the book says its track. Open one together with its track file: its laps are then seen here through the season.</source>
        <translation>記録帳には、コースのわかるセッションがありません。コースファイルと一緒に1つ開くと、そのラップをシーズンを通して見られます。</translation>
    </message>
    <message>
        <source>No session on %1 is in the book.</source>
        <translation>%1のセッションは記録帳にありません。</translation>
    </message>
    <message>
        <source>No session was taken out of the book.</source>
        <translation>記録帳から外したセッションはありません。</translation>
    </message>
    <message>
        <source>No video is in step with these laps: choose one on the Compare page (Y).</source>
        <translation>このラップと同期した動画がありません。「比較」ページで選んでください (Y)。</translation>
    </message>
    <message>
        <source>No video of %1: choose one, and it is put in step by itself</source>
        <translation>%1の動画はありません。選ぶと自動で同期します</translation>
    </message>
    <message>
        <source>Not in the book yet</source>
        <translation>記録帳に未保存</translation>
    </message>
    <message>
        <source>Not in the book yet: %1. It is tried again at the next edit, and by a click on the sign above.</source>
        <translation>まだ記録帳に保存されていません: %1。次の変更のとき、または上の表示をクリックすると再試行します。</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>Note of A</source>
        <translation>Aのメモ</translation>
    </message>
    <message>
        <source>Note of A on %1</source>
        <translation>%1についてのAのメモ</translation>
    </message>
    <message>
        <source>Note of B</source>
        <translation>Bのメモ</translation>
    </message>
    <message>
        <source>Note of B on %1</source>
        <translation>%1についてのBのメモ</translation>
    </message>
    <message>
        <source>Note on %1</source>
        <translation>%1のメモ</translation>
    </message>
    <message>
        <source>Note on the segment as &amp;A drove it</source>
        <translation>Aの区間メモ(&amp;A)</translation>
    </message>
    <message>
        <source>Note on the segment as &amp;B drove it</source>
        <translation>Bの区間メモ(&amp;B)</translation>
    </message>
    <message>
        <source>Note on this &amp;lap</source>
        <translation>このラップのメモ(&amp;L)</translation>
    </message>
    <message>
        <source>Note on this &amp;session</source>
        <translation>このセッションのメモ(&amp;S)</translation>
    </message>
    <message>
        <source>Note on this lap</source>
        <translation>このラップのメモ</translation>
    </message>
    <message>
        <source>Note on this session</source>
        <translation>このセッションのメモ</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>Notes for the sheet</source>
        <translation>シートのメモ</translation>
    </message>
    <message>
        <source>Nothing is fitted to the laps of %1 yet: compare one of its sessions and look at the Causes page; what the data say of the car is then kept here.</source>
        <translation>%1のラップにはまだ何も当てはめていません。そのセッションを1つ比較して「要因」ページを開くと、データから見た車の特性がここに残ります。</translation>
    </message>
    <message>
        <source>Nothing is predicted yet: move a control of What if on the Causes page, then keep it.</source>
        <translation>まだ予測がありません。要因のページで「試算」のつまみを動かしてから保存してください。</translation>
    </message>
    <message>
        <source>Nothing was guessed, left out or mended.</source>
        <translation>推定、除外、修正したものはありません。</translation>
    </message>
    <message>
        <source>Nov</source>
        <translation>11月</translation>
    </message>
    <message>
        <source>Now less the best; &quot;or chance&quot; where the best of as many equal laps may lie as low</source>
        <translation>現在とベストの差。同じ速さのラップを同じ数走っただけでもその程度のベストが出うるときは「偶然かも」</translation>
    </message>
    <message>
        <source>Now, s</source>
        <translation>現在, s</translation>
    </message>
    <message>
        <source>Oct</source>
        <translation>10月</translation>
    </message>
    <message>
        <source>Of the car it changed: %1.</source>
        <translation>車の変化: %1。</translation>
    </message>
    <message>
        <source>Offset to the left of the reference line</source>
        <translation>基準ラインから左へのずれ</translation>
    </message>
    <message>
        <source>On average %1 s, 95 % between %2 and %3.</source>
        <translation>平均 %1 s、95 % 範囲は%2から%3です。</translation>
    </message>
    <message>
        <source>On the &amp;track of:</source>
        <translation>対象コース(&amp;T):</translation>
    </message>
    <message>
        <source>Once it was driven, the book&apos;s predictions say what happened (%1).</source>
        <translation>走行後、記録帳の予測に実際の結果が出ます（%1）。</translation>
    </message>
    <message>
        <source>One frame &amp;on</source>
        <translation>1コマ先へ(&amp;O)</translation>
    </message>
    <message>
        <source>One frame bac&amp;k</source>
        <translation>1コマ後ろへ(&amp;K)</translation>
    </message>
    <message>
        <source>One pairing. Return opens it with both its sessions, Delete takes it out.</source>
        <translation>ペア1件。Returnで両方のセッションと一緒に開き、Deleteで外します。</translation>
    </message>
    <message>
        <source>One session was timed at another line of the track than the rest, so that lap times differ a little without a reason: %2.</source>
        <translation>1件のセッションがほかと違う計測ラインで計時されているため、実際の差がなくてもラップタイムがわずかに違って出ます: %2。</translation>
    </message>
    <message>
        <source>Only a flying lap can be set aside or counted.</source>
        <translation>除外・採用できるのは計測ラップだけです。</translation>
    </message>
    <message>
        <source>Only with a clear track behind and where the organiser allows it.</source>
        <translation>後ろに他車がなく、主催者が認める場合に限ります。</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>開く</translation>
    </message>
    <message>
        <source>Open a setup sheet</source>
        <translation>セッティングシートを開く</translation>
    </message>
    <message>
        <source>Open again what was open &amp;when the program stopped</source>
        <translation>前回終了時に開いていたものを開く(&amp;W)</translation>
    </message>
    <message>
        <source>Open files…</source>
        <translation>ファイルを開く…</translation>
    </message>
    <message>
        <source>Open logger files</source>
        <translation>ロガーファイルを開く</translation>
    </message>
    <message>
        <source>Open sessions</source>
        <translation>開いているセッション</translation>
    </message>
    <message>
        <source>Open them again</source>
        <translation>もう一度開く</translation>
    </message>
    <message>
        <source>Open what is chosen</source>
        <translation>選んだものを開く</translation>
    </message>
    <message>
        <source>Opened &amp;lately</source>
        <translation>最近開いたもの(&amp;L)</translation>
    </message>
    <message>
        <source>Over %1: %2. %3. %4 Segment by segment, in seconds: %5.</source>
        <translation>%1にわたるグラフ: %2。%3。%4 区間ごと (s): %5。</translation>
    </message>
    <message>
        <source>Over all laps, where the 95 % interval tells it</source>
        <translation>全ラップの推移。95 % 範囲で言えるとき</translation>
    </message>
    <message>
        <source>P&amp;rint the debrief sheet…</source>
        <translation>振り返りシートを印刷(&amp;R)…</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDFファイル (*.pdf)</translation>
    </message>
    <message>
        <source>Pa&amp;ce</source>
        <translation>再生速度(&amp;C)</translation>
    </message>
    <message>
        <source>Pairings that the book keeps</source>
        <translation>記録帳に保存したペア</translation>
    </message>
    <message>
        <source>Pan</source>
        <translation>表示の移動</translation>
    </message>
    <message>
        <source>Pan &amp;back</source>
        <translation>表示を後ろへ(&amp;B)</translation>
    </message>
    <message>
        <source>Pan &amp;on</source>
        <translation>表示を先へ(&amp;O)</translation>
    </message>
    <message>
        <source>Panel &amp;lower</source>
        <translation>パネルを低く(&amp;L)</translation>
    </message>
    <message>
        <source>Panel &amp;taller</source>
        <translation>パネルを高く(&amp;T)</translation>
    </message>
    <message>
        <source>Part in the trial</source>
        <translation>テストでの役割</translation>
    </message>
    <message>
        <source>Part of %1</source>
        <translation>%1の役割</translation>
    </message>
    <message>
        <source>Pictures (*.svg *.png)</source>
        <translation>画像 (*.svg *.png)</translation>
    </message>
    <message>
        <source>Play the chosen segment again and again</source>
        <translation>選んだ区間を繰り返し再生</translation>
    </message>
    <message>
        <source>Plots over distance</source>
        <translation>距離に対するグラフ</translation>
    </message>
    <message>
        <source>Power at the wheels if known</source>
        <translation>駆動輪出力、わかれば</translation>
    </message>
    <message>
        <source>Predicted</source>
        <translation>予測</translation>
    </message>
    <message>
        <source>Predictions</source>
        <translation>予測</translation>
    </message>
    <message>
        <source>Predictions that the book keeps</source>
        <translation>記録帳の予測</translation>
    </message>
    <message>
        <source>Predictions, and how often the&amp;y held…</source>
        <translation>予測と的中率(&amp;F)…</translation>
    </message>
    <message>
        <source>Preparing the print…</source>
        <translation>印刷を準備しています…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>印刷…</translation>
    </message>
    <message>
        <source>Put the timing &amp;line at the cursor</source>
        <translation>計測ラインをカーソル位置に(&amp;L)</translation>
    </message>
    <message>
        <source>Quicker by %1 over all laps, but no more in the later half of them.</source>
        <translation>全ラップでは%1ずつ速くなっていますが、後半のラップではもう速くなっていません。</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>範囲</translation>
    </message>
    <message>
        <source>Rate</source>
        <translation>周波数</translation>
    </message>
    <message>
        <source>Rate, range and gaps of every channel; what was guessed, left out and mended</source>
        <translation>全チャンネルの周波数、範囲、欠落と、推定・除外・修正したもの</translation>
    </message>
    <message>
        <source>Read as</source>
        <translation>読み取り値</translation>
    </message>
    <message>
        <source>Read by</source>
        <translation>読み方</translation>
    </message>
    <message>
        <source>Reading the whole book</source>
        <translation>記録帳全体を読み込み中</translation>
    </message>
    <message>
        <source>Rear spring rate at the wheel, N/mm</source>
        <translation>リアのホイールレート, N/mm</translation>
    </message>
    <message>
        <source>Remember this set</source>
        <translation>この組を登録</translation>
    </message>
    <message>
        <source>Remove it</source>
        <translation>外す</translation>
    </message>
    <message>
        <source>Removed sessions</source>
        <translation>外したセッション</translation>
    </message>
    <message>
        <source>Remove…</source>
        <translation>外す…</translation>
    </message>
    <message>
        <source>Renamed.</source>
        <translation>名前を変えました。</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>レポート</translation>
    </message>
    <message>
        <source>Return keeps the note, Shift+Return begins a new line, Escape leaves it as it was</source>
        <translation>Returnでメモを保存、Shift+Returnで改行、Escapeで元のまま</translation>
    </message>
    <message>
        <source>Return names the session that was driven with one, Delete takes it back.</source>
        <translation>Enterで走行したセッションを指定し、Deleteで取り消します。</translation>
    </message>
    <message>
        <source>Return opens what is chosen; Shift and the arrows choose several</source>
        <translation>Returnで選んだものを開き、Shiftと矢印キーで複数を選びます</translation>
    </message>
    <message>
        <source>Return, double-click</source>
        <translation>Return、ダブルクリック</translation>
    </message>
    <message>
        <source>Rows per &amp;second</source>
        <translation>毎秒の行数(&amp;S)</translation>
    </message>
    <message>
        <source>Rows per second: a number from 0.1 to 10,000, or nothing.</source>
        <translation>毎秒の行数: 0.1から10,000までの数を入れるか、空けてください。</translation>
    </message>
    <message>
        <source>Run home</source>
        <translation>最終直線</translation>
    </message>
    <message>
        <source>S&amp;lowest point</source>
        <translation>ボトム(&amp;L)</translation>
    </message>
    <message>
        <source>S&amp;plit the segment at the cursor</source>
        <translation>区間をカーソル位置で分割(&amp;P)</translation>
    </message>
    <message>
        <source>Sa&amp;ve the track as a file…</source>
        <translation>コースをファイルに保存(&amp;V)…</translation>
    </message>
    <message>
        <source>Save as HTML…</source>
        <translation>HTMLで保存…</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>PDFで保存…</translation>
    </message>
    <message>
        <source>Save the &amp;table as CSV…</source>
        <translation>表をCSVで保存(&amp;T)…</translation>
    </message>
    <message>
        <source>Save the debrief sheet</source>
        <translation>振り返りシートを保存</translation>
    </message>
    <message>
        <source>Save the debrief sheet as &amp;HTML…</source>
        <translation>振り返りシートをHTMLで保存(&amp;M)…</translation>
    </message>
    <message>
        <source>Save the debrief sheet as &amp;PDF…</source>
        <translation>振り返りシートをPDFで保存(&amp;P)…</translation>
    </message>
    <message>
        <source>Save the p&amp;lots as SVG or PNG…</source>
        <translation>グラフをSVGかPNGで保存(&amp;L)…</translation>
    </message>
    <message>
        <source>Save the plots as SVG or PNG</source>
        <translation>グラフをSVGかPNGで保存</translation>
    </message>
    <message>
        <source>Save the table: %1</source>
        <translation>表を保存: %1</translation>
    </message>
    <message>
        <source>Save the track</source>
        <translation>コースを保存</translation>
    </message>
    <message>
        <source>Saving what can be read</source>
        <translation>読める部分を救出中</translation>
    </message>
    <message>
        <source>Se&amp;t the lap aside, count it, or leave it to the program</source>
        <translation>ラップを除外・採用・自動判定(&amp;T)</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>シーズン</translation>
    </message>
    <message>
        <source>Seconds of each segment by cause</source>
        <translation>要因別の区間タイム差 (s)</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>確認事項</translation>
    </message>
    <message>
        <source>Seen from above, north up: a lap of %1 m with %2 corners: %3</source>
        <translation>上から見た図、上が北: 1周%1 m、コーナー%2つ: %3</translation>
    </message>
    <message>
        <source>Segment</source>
        <translation>区間</translation>
    </message>
    <message>
        <source>Segment times of all clean laps</source>
        <translation>全クリアラップの区間タイム</translation>
    </message>
    <message>
        <source>Segments</source>
        <translation>区間</translation>
    </message>
    <message>
        <source>Sep</source>
        <translation>9月</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>セッション</translation>
    </message>
    <message>
        <source>Sessions of the &amp;book…</source>
        <translation>記録帳のセッション(&amp;B)…</translation>
    </message>
    <message>
        <source>Sessions of the book</source>
        <translation>記録帳のセッション</translation>
    </message>
    <message>
        <source>Sessions of the season</source>
        <translation>シーズンのセッション</translation>
    </message>
    <message>
        <source>Sessions of the trial</source>
        <translation>テストのセッション</translation>
    </message>
    <message>
        <source>Sessions through time</source>
        <translation>セッションの時系列</translation>
    </message>
    <message>
        <source>Set of channels</source>
        <translation>チャンネルの組</translation>
    </message>
    <message>
        <source>Set&amp;up of both cars…</source>
        <translation>両車のセッティング(&amp;U)…</translation>
    </message>
    <message>
        <source>Setup of A: %1. Setup of B: %2.</source>
        <translation>Aのセッティング: %1。Bのセッティング: %2。</translation>
    </message>
    <message>
        <source>Setup of both cars</source>
        <translation>両車のセッティング</translation>
    </message>
    <message>
        <source>Setup sheet then</source>
        <translation>その時のセッティングシート</translation>
    </message>
    <message>
        <source>Setup sheets (*.setup.json *.json);;All files (*)</source>
        <translation>セッティングシート (*.setup.json *.json);;すべてのファイル (*)</translation>
    </message>
    <message>
        <source>Setup since the one before</source>
        <translation>前回からのセット変更</translation>
    </message>
    <message>
        <source>Setup tri&amp;al…</source>
        <translation>セット変更テスト(&amp;E)…</translation>
    </message>
    <message>
        <source>Setup trial</source>
        <translation>セット変更テスト</translation>
    </message>
    <message>
        <source>Setup trial…</source>
        <translation>セット変更テスト…</translation>
    </message>
    <message>
        <source>Setup, A · B</source>
        <translation>セッティング, A · B</translation>
    </message>
    <message>
        <source>Setup…</source>
        <translation>セッティング…</translation>
    </message>
    <message>
        <source>Show &amp;less of the lap</source>
        <translation>ラップを拡大(&amp;L)</translation>
    </message>
    <message>
        <source>Show &amp;more of the lap</source>
        <translation>ラップを縮小(&amp;M)</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>すべて表示</translation>
    </message>
    <message>
        <source>Show less or more, at the pointer</source>
        <translation>ポインターの位置で拡大・縮小</translation>
    </message>
    <message>
        <source>Show the &amp;whole lap</source>
        <translation>ラップ全体を表示(&amp;W)</translation>
    </message>
    <message>
        <source>Show the chosen segment close &amp;up</source>
        <translation>選んだ区間を拡大(&amp;Z)</translation>
    </message>
    <message>
        <source>Show the first three</source>
        <translation>上位3件だけ表示</translation>
    </message>
    <message>
        <source>Show the folder of the &amp;log…</source>
        <translation>ログのフォルダーを表示(&amp;L)…</translation>
    </message>
    <message>
        <source>Show the whole page</source>
        <translation>ページ全体を表示</translation>
    </message>
    <message>
        <source>Show this lap be&amp;hind A and B, or no more</source>
        <translation>このラップをA・Bの背景に表示・解除(&amp;H)</translation>
    </message>
    <message>
        <source>Show this place on the Compare page</source>
        <translation>この場所を「比較」ページで表示</translation>
    </message>
    <message>
        <source>Simulated: the driver uses the tyres as now. A setup trial of your own wing tells what it costs; change it in small steps, and within the event&apos;s rules.</source>
        <translation>シミュレーションです。ドライバーのタイヤの使い方は今と同じとしています。代償の大きさは、ご自身のウイングでのセット変更テストでわかります。変更は少しずつ、大会規則の範囲で行ってください。</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>サイズ</translation>
    </message>
    <message>
        <source>Slowest</source>
        <translation>ボトム</translation>
    </message>
    <message>
        <source>Slowest %1 against %2</source>
        <translation>ボトム %1対%2</translation>
    </message>
    <message>
        <source>Slowest speed in a corner, fastest on a straight, %1</source>
        <translation>コーナーは最低速度、ストレートは最高速度, %1</translation>
    </message>
    <message>
        <source>So&amp;und of B</source>
        <translation>Bの音声(&amp;U)</translation>
    </message>
    <message>
        <source>Sort the laps</source>
        <translation>ラップの並べ替え</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>速度</translation>
    </message>
    <message>
        <source>Speed at the end of the segment, %1</source>
        <translation>区間の終わりの速度, %1</translation>
    </message>
    <message>
        <source>Speed of A and B, and the gap, over the distance along the track</source>
        <translation>コース上の距離に対するAとBの速度とタイム差</translation>
    </message>
    <message>
        <source>Spread of each driver&apos;s &amp;other clean laps</source>
        <translation>各ドライバーのほかのクリアラップのばらつき(&amp;R)</translation>
    </message>
    <message>
        <source>St&amp;ills of both videos, a page</source>
        <translation>両車の静止画ページを追加(&amp;I)</translation>
    </message>
    <message>
        <source>Start straight</source>
        <translation>スタート直線</translation>
    </message>
    <message>
        <source>Still to be won, s</source>
        <translation>伸びしろ, s</translation>
    </message>
    <message>
        <source>Stills of both videos on the debrief sheet</source>
        <translation>振り返りシートに両車の静止画</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>中止</translation>
    </message>
    <message>
        <source>Stop what is &amp;running</source>
        <translation>実行中の処理を中止(&amp;R)</translation>
    </message>
    <message>
        <source>Stopped. Choose the car again to begin anew.</source>
        <translation>中止しました。車を選び直すと最初から始めます。</translation>
    </message>
    <message>
        <source>Stopped: nothing was reckoned.</source>
        <translation>中止しました。何も計算していません。</translation>
    </message>
    <message>
        <source>Stopped: the causes were not worked out. Choose the page again to start anew.</source>
        <translation>中止しました。要因は計算されていません。ページを選び直すと最初から計算します。</translation>
    </message>
    <message>
        <source>Straights that matter</source>
        <translation>差の出るストレート</translation>
    </message>
    <message>
        <source>Sure?</source>
        <translation>有意差</translation>
    </message>
    <message>
        <source>Swap A and B</source>
        <translation>AとBを入れ替え</translation>
    </message>
    <message>
        <source>Sweep: felt planted, could lift later</source>
        <translation>Sweep: 安定していた。アクセルオフをもっと遅らせられる</translation>
    </message>
    <message>
        <source>T&amp;he book itself</source>
        <translation>記録帳の管理(&amp;H)</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>表 (*.csv)</translation>
    </message>
    <message>
        <source>Take %1 out of the book? </source>
        <translation>%1を記録帳から外しますか? </translation>
    </message>
    <message>
        <source>Take a recipe from a file</source>
        <translation>ファイルからレシピを読み込む</translation>
    </message>
    <message>
        <source>Take a session or a pairing out of the book</source>
        <translation>セッションやペアを記録帳から外す</translation>
    </message>
    <message>
        <source>Take the &amp;next panel in hand</source>
        <translation>次のパネルを選ぶ(&amp;N)</translation>
    </message>
    <message>
        <source>Taken for</source>
        <translation>解釈</translation>
    </message>
    <message>
        <source>Taken, in place of &quot;%1&quot;, which was made for the same files.</source>
        <translation>読み込みました。同じファイル用の「%1」と入れ替えました。</translation>
    </message>
    <message>
        <source>Taken.</source>
        <translation>読み込みました。</translation>
    </message>
    <message>
        <source>Takes the session off this page; its file stays as it is</source>
        <translation>セッションをこのページから外します。ファイルはそのまま残ります</translation>
    </message>
    <message>
        <source>Takes the session out of the book; its file stays as it is (Delete)</source>
        <translation>セッションを記録帳から外します。ファイルはそのまま残ります (Delete)</translation>
    </message>
    <message>
        <source>Taking in the other book</source>
        <translation>別の記録帳を取り込み中</translation>
    </message>
    <message>
        <source>Text, GPX or NMEA, from any logger. They are read and never changed.</source>
        <translation>テキスト、GPX、NMEA。ロガーは問いません。ファイルは読むだけで、変更しません。</translation>
    </message>
    <message>
        <source>The book</source>
        <translation>記録帳</translation>
    </message>
    <message>
        <source>The book is damaged: %1. Its sessions can still be opened; &quot;lapwright book salvage&quot; makes a whole book of what can be read, when no window has it open.</source>
        <translation>記録帳が破損しています: %1。セッションはまだ開けます。どのウィンドウでも開いていないときに「lapwright book salvage」を実行すると、読める部分から正常な記録帳を作ります。</translation>
    </message>
    <message>
        <source>The book is empty: open a file, and its session is in it.</source>
        <translation>記録帳は空です。ファイルを開くと、そのセッションが入ります。</translation>
    </message>
    <message>
        <source>The book is whole; nothing was changed.</source>
        <translation>記録帳に破損はありません。何も変更していません。</translation>
    </message>
    <message>
        <source>The book on the Sessions page</source>
        <translation>「セッション」ページの記録帳</translation>
    </message>
    <message>
        <source>The book was read to its end and is whole.</source>
        <translation>記録帳を最後まで読みました。破損はありません。</translation>
    </message>
    <message>
        <source>The book…</source>
        <translation>記録帳…</translation>
    </message>
    <message>
        <source>The car is quickest as it is now: nothing is predicted to change.</source>
        <translation>今のままが最速です：変化は予測されていません。</translation>
    </message>
    <message>
        <source>The car of %1 is yours</source>
        <translation>%1が自分の車</translation>
    </message>
    <message>
        <source>The change (95 %), times in s a lap</source>
        <translation>変更の効果 (95 %)、タイムは1周あたりs</translation>
    </message>
    <message>
        <source>The change costs %1 a lap</source>
        <translation>変更で1周%1遅くなります</translation>
    </message>
    <message>
        <source>The change is worth %1 a lap</source>
        <translation>変更で1周%1速くなります</translation>
    </message>
    <message>
        <source>The debrief sheet</source>
        <translation>振り返りシート</translation>
    </message>
    <message>
        <source>The debrief sheet as it will print</source>
        <translation>印刷どおりの振り返りシート</translation>
    </message>
    <message>
        <source>The first %1 rows make %2 channels over %3 s.</source>
        <translation>先頭の%1行から、%3 s分のチャンネル%2本ができます。</translation>
    </message>
    <message>
        <source>The language changes when Lapwright is started the next time.</source>
        <translation>言語は、次にLapwrightを起動したときに変わります。</translation>
    </message>
    <message>
        <source>The lap of %1 is not clean (%2).</source>
        <translation>%1のラップはクリアラップではありません（%2）。</translation>
    </message>
    <message>
        <source>The lap of %1 is not clean.</source>
        <translation>%1のラップはクリアラップではありません。</translation>
    </message>
    <message>
        <source>The largest part is %1: %2 gains %3 there</source>
        <translation>最大の部分は%1で、%2がそこで%3稼いでいます</translation>
    </message>
    <message>
        <source>The largest part is probably %1: %2 gains %3 there</source>
        <translation>最大の部分はおそらく%1で、%2がそこで%3稼いでいます</translation>
    </message>
    <message>
        <source>The mass of car %1 is not known: figures are per kilogram, and mass is not a cause of its own. Enter it under Setup.</source>
        <translation>車%1の車重がわかりません。数値は1 kgあたりで、車重は独立した要因になりません。「セッティング」で入力してください。</translation>
    </message>
    <message>
        <source>The mass of neither car is known: figures are per kilogram, and mass is not a cause of its own. Enter it under Setup.</source>
        <translation>両車とも車重がわかりません。数値は1 kgあたりで、車重は独立した要因になりません。「セッティング」で入力してください。</translation>
    </message>
    <message>
        <source>The model does not fit here: </source>
        <translation>ここではモデルが適合しません: </translation>
    </message>
    <message>
        <source>The next test that tells most</source>
        <translation>次に行うと最も多くわかるテスト</translation>
    </message>
    <message>
        <source>The program ended before its window was closed. These were open: %1.</source>
        <translation>ウィンドウを閉じる前にプログラムが終了しました。開いていたもの: %1。</translation>
    </message>
    <message>
        <source>The program has no question.</source>
        <translation>確認が必要な列はありません。</translation>
    </message>
    <message>
        <source>The program is not sure of %1 columns, marked with a question mark.</source>
        <translation>はっきりしない列が%1つあります。?印の列です。</translation>
    </message>
    <message>
        <source>The program is not sure of one column, marked with a question mark.</source>
        <translation>はっきりしない列が1つあります。?印の列です。</translation>
    </message>
    <message>
        <source>The program took it for: %1 (%2)</source>
        <translation>自動判定の解釈: %1 (%2)</translation>
    </message>
    <message>
        <source>The quickest clean lap there</source>
        <translation>その区間の最速クリアラップ</translation>
    </message>
    <message>
        <source>The segment &amp;ends at the cursor</source>
        <translation>区間の終点をカーソル位置に(&amp;E)</translation>
    </message>
    <message>
        <source>The segment &amp;starts at the cursor</source>
        <translation>区間の始点をカーソル位置に(&amp;S)</translation>
    </message>
    <message>
        <source>The session was driven on %1.</source>
        <translation>セッションを走ったのは%1です。</translation>
    </message>
    <message>
        <source>The setup of %1 was read from %2.</source>
        <translation>%1のセッティングを%2から読み込みました。</translation>
    </message>
    <message>
        <source>The system&apos;s &amp;language</source>
        <translation>システムの言語(&amp;L)</translation>
    </message>
    <message>
        <source>The track from above, with the places of the findings</source>
        <translation>上から見たコースと所見の場所</translation>
    </message>
    <message>
        <source>The track that is asked about</source>
        <translation>試算するコース</translation>
    </message>
    <message>
        <source>The trend over all laps; minus is quicker</source>
        <translation>全ラップの傾向。マイナスは速くなる向き</translation>
    </message>
    <message>
        <source>The video begins this long behind the recording. Put the cursor at a place that you know in the picture, and move this until the picture is there.</source>
        <translation>動画の始まりは走行データよりこれだけ後です。画面でわかる場所にカーソルを置き、画がその場所になるまでこの値を動かしてください。</translation>
    </message>
    <message>
        <source>The video is being opened</source>
        <translation>動画を開いています</translation>
    </message>
    <message>
        <source>The video of %1 begins this long behind the recording</source>
        <translation>%1の動画の始まりは走行データよりこれだけ後</translation>
    </message>
    <message>
        <source>The videos do not show these moments.</source>
        <translation>動画にはこの瞬間が映っていません。</translation>
    </message>
    <message>
        <source>The window goes on without its book. %1</source>
        <translation>記録帳なしで続けます。%1</translation>
    </message>
    <message>
        <source>There are none yet. One is kept whenever the columns of a file are answered for.</source>
        <translation>レシピはまだありません。列の確認を終えると1件保存されます。</translation>
    </message>
    <message>
        <source>There is a %1 &quot;%2&quot; already: the two become one, and all sessions of &quot;%3&quot; are then of &quot;%2&quot;.</source>
        <translation>%1「%2」は既にあります。2つを1つにまとめ、「%3」のセッションはすべて「%2」のものになります。</translation>
    </message>
    <message>
        <source>There is no book that can be written: it is what keeps predictions.</source>
        <translation>書き込める記録帳がありません。予測は記録帳に保存されます。</translation>
    </message>
    <message>
        <source>These rows make no session: %1</source>
        <translation>これらの行からはセッションができません: %1</translation>
    </message>
    <message>
        <source>These sessions were taken out of the book. One comes back with its laps, notes and pairings, as it was.</source>
        <translation>記録帳から外したセッションです。戻すと、ラップ、メモ、ペアもそのまま戻ります。</translation>
    </message>
    <message>
        <source>This recipe is used for files of its shape: the same delimiter and the same names of columns.</source>
        <translation>このレシピは同じ形のファイル、つまり区切り文字と列名が同じファイルに使います。</translation>
    </message>
    <message>
        <source>Time won, s: A up, B down; outline: within its error</source>
        <translation>稼いだタイム, s: 上がA、下がB。枠だけは誤差内</translation>
    </message>
    <message>
        <source>Times over the laps</source>
        <translation>周回ごとのタイム</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>To keep in mind</source>
        <translation>留意点</translation>
    </message>
    <message>
        <source>Top speed</source>
        <translation>最高速</translation>
    </message>
    <message>
        <source>Touch the plot, or use the arrow keys: both speeds and the gap at that place.</source>
        <translation>グラフに触れるか矢印キーを使うと、その場所の両車の速度とタイム差が出ます。</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>コース</translation>
    </message>
    <message>
        <source>Track files (*.json)</source>
        <translation>コースファイル (*.json)</translation>
    </message>
    <message>
        <source>Track without a name</source>
        <translation>名前のないコース</translation>
    </message>
    <message>
        <source>Track, unrolled: bumps up are left-handers</source>
        <translation>コース曲率: 上が左コーナー</translation>
    </message>
    <message>
        <source>Trust r&amp;eport of this session</source>
        <translation>このセッションの信頼性レポート(&amp;E)</translation>
    </message>
    <message>
        <source>Try next: %1</source>
        <translation>次に試す: %1</translation>
    </message>
    <message>
        <source>Try the sample sessions</source>
        <translation>サンプルセッションを試す</translation>
    </message>
    <message>
        <source>Tyre</source>
        <translation>タイヤ</translation>
    </message>
    <message>
        <source>Tyre grip and downforce that the laps allow</source>
        <translation>ラップと整合するタイヤグリップとダウンフォース</translation>
    </message>
    <message>
        <source>Tyres used: A %1, B %2</source>
        <translation>タイヤ使用率: A %1、B %2</translation>
    </message>
    <message>
        <source>US Letter</source>
        <translation>USレター</translation>
    </message>
    <message>
        <source>Un&amp;its</source>
        <translation>単位(&amp;I)</translation>
    </message>
    <message>
        <source>Uncertainty b&amp;and on the gap</source>
        <translation>タイム差の不確かさの帯(&amp;A)</translation>
    </message>
    <message>
        <source>Undo brings all of it back; its file stays as it is.</source>
        <translation>「元に戻す」ですべて戻ります。ファイルはそのまま残ります。</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>単位</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>単位</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>↑、↓</translation>
    </message>
    <message>
        <source>Use and keep</source>
        <translation>適用して保存</translation>
    </message>
    <message>
        <source>Used for files with</source>
        <translation>対象ファイルの形式</translation>
    </message>
    <message>
        <source>Usual key</source>
        <translation>標準</translation>
    </message>
    <message>
        <source>Values of the first rows</source>
        <translation>先頭行の値</translation>
    </message>
    <message>
        <source>Vi&amp;deo</source>
        <translation>動画(&amp;D)</translation>
    </message>
    <message>
        <source>Video of %1</source>
        <translation>%1の動画</translation>
    </message>
    <message>
        <source>Video of %1, all files of it that the camera wrote</source>
        <translation>%1の動画、カメラが書いたファイルすべて</translation>
    </message>
    <message>
        <source>Video of &amp;A…</source>
        <translation>Aの動画(&amp;A)…</translation>
    </message>
    <message>
        <source>Video of &amp;B…</source>
        <translation>Bの動画(&amp;B)…</translation>
    </message>
    <message>
        <source>Videos</source>
        <translation>動画</translation>
    </message>
    <message>
        <source>Videos: %1</source>
        <translation>動画: %1</translation>
    </message>
    <message>
        <source>Video…</source>
        <translation>動画を選択…</translation>
    </message>
    <message>
        <source>What %1 are worth cannot be told.</source>
        <translation>%1の効果は判定できません。</translation>
    </message>
    <message>
        <source>What %1 is worth cannot be told.</source>
        <translation>%1の効果は判定できません。</translation>
    </message>
    <message>
        <source>What both drivers do</source>
        <translation>両ドライバーの走らせ方</translation>
    </message>
    <message>
        <source>What came out</source>
        <translation>結果</translation>
    </message>
    <message>
        <source>What can be done there</source>
        <translation>その場でできること</translation>
    </message>
    <message>
        <source>What comes out</source>
        <translation>読み取り結果</translation>
    </message>
    <message>
        <source>What each column of the file was taken for; correct it here</source>
        <translation>ファイルの各列の解釈。ここで直せます</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>実際の結果</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>試算</translation>
    </message>
    <message>
        <source>What is a change worth? Sessions without it and with it, compared segment by segment</source>
        <translation>変更の効果はどれだけか。変更なしとありのセッションを区間ごとに比較</translation>
    </message>
    <message>
        <source>What is changed</source>
        <translation>変えるもの</translation>
    </message>
    <message>
        <source>What it did to the car cannot be told: %1.</source>
        <translation>車がどう変わったかは判定できません: %1。</translation>
    </message>
    <message>
        <source>What it shows are estimates from recorded data. They can be wrong, and they know nothing of the next lap&apos;s weather, traffic or tyres.</source>
        <translation>表示されるのは記録されたデータからの推定値です。誤ることもあり、次のラップの天候、他車、タイヤについては何もわかりません。</translation>
    </message>
    <message>
        <source>What makes the difference between the cars cannot be told from these laps.</source>
        <translation>車の差が何によるかは、このラップからは判定できません。</translation>
    </message>
    <message>
        <source>What the aero is worth cannot be told: %1.</source>
        <translation>空力の効果は判定できません: %1。</translation>
    </message>
    <message>
        <source>What the change is worth cannot be told from these laps: %1 a lap.</source>
        <translation>変更の効果はこのラップからは判定できません: 1周%1。</translation>
    </message>
    <message>
        <source>What the change is worth, by segment</source>
        <translation>変更の効果、区間ごと</translation>
    </message>
    <message>
        <source>What the data say of each car</source>
        <translation>データから見た各車の特性</translation>
    </message>
    <message>
        <source>What the drivers make of it cannot be told apart from the cars.</source>
        <translation>ドライバーによる分は、車による分と切り分けられません。</translation>
    </message>
    <message>
        <source>What was driven since is being looked at…</source>
        <translation>その後の走行を調べています…</translation>
    </message>
    <message>
        <source>What was open was a part of another book: start the program with that book.</source>
        <translation>開いていたものは別の記録帳に入っています。その記録帳でプログラムを起動してください。</translation>
    </message>
    <message>
        <source>Wheel speed and satellite speed agree within %1 %.</source>
        <translation>車輪速と衛星測位の速度は%1 %以内で一致しています。</translation>
    </message>
    <message>
        <source>Wheel speed reads %1 % high against satellite speed.</source>
        <translation>車輪速が衛星測位の速度より%1 %高く出ています。</translation>
    </message>
    <message>
        <source>Wheel speed reads %1 % low against satellite speed.</source>
        <translation>車輪速が衛星測位の速度より%1 %低く出ています。</translation>
    </message>
    <message>
        <source>When the session was driven, in UTC; the day alone will do.</source>
        <translation>セッションを走った日時 (UTC)。日付だけでもかまいません。</translation>
    </message>
    <message>
        <source>Where both cars drove, close up on the chosen segment, and how far apart they were</source>
        <translation>選んだ区間で両車が走ったラインの拡大図と、その間隔</translation>
    </message>
    <message>
        <source>Where it &amp;turns in</source>
        <translation>ターンイン(&amp;T)</translation>
    </message>
    <message>
        <source>Where the trend of the later half of the laps ends</source>
        <translation>後半のラップの傾向線の終点</translation>
    </message>
    <message>
        <source>Whether the aero of either car pays off cannot be told from these laps.</source>
        <translation>どちらかの車の空力が得になっているかどうかは、このラップからは判定できません。</translation>
    </message>
    <message>
        <source>Whether the lap times fall cannot be told from %1.</source>
        <translation>%1からは、ラップタイムが縮んでいるかどうか判定できません。</translation>
    </message>
    <message>
        <source>Whether the lap times fall cannot be told: %1.</source>
        <translation>ラップタイムが縮んでいるかどうかは判定できません: %1。</translation>
    </message>
    <message>
        <source>Which car is yours?</source>
        <translation>自分の車は?</translation>
    </message>
    <message>
        <source>Which lap is quicker cannot be told from these recordings.</source>
        <translation>この走行データからは、どちらのラップが速いか判定できません。</translation>
    </message>
    <message>
        <source>Which session was driven with it?</source>
        <translation>どのセッションで走りましたか？</translation>
    </message>
    <message>
        <source>Which sessions or figure</source>
        <translation>どのセッションか、どの特性値か</translation>
    </message>
    <message>
        <source>Which track or car</source>
        <translation>どのコースか、どの車か</translation>
    </message>
    <message>
        <source>Who corners faster cannot be told from these laps.</source>
        <translation>どちらがコーナーで速いかは、このラップからは判定できません。</translation>
    </message>
    <message>
        <source>Who is quicker in %1 cannot be told.</source>
        <translation>%1でどちらが速いかは判定できません。</translation>
    </message>
    <message>
        <source>Whole lap</source>
        <translation>ラップ全体</translation>
    </message>
    <message>
        <source>Whom %1 favours cannot be told from these laps.</source>
        <translation>%1がどちらに有利かは、このラップからは判定できません。</translation>
    </message>
    <message>
        <source>Whom %1 together favour cannot be told from these laps.</source>
        <translation>%1を合わせてどちらに有利かは、このラップからは判定できません。</translation>
    </message>
    <message>
        <source>With it go its laps and samples, %1. </source>
        <translation>ラップ、サンプル、%1も一緒に外れます。 </translation>
    </message>
    <message>
        <source>Within %1 s of the quickest it is from %2 to %3.</source>
        <translation>最速から%1 s以内に収まるのは%2から%3までです。</translation>
    </message>
    <message>
        <source>Won by</source>
        <translation>速い側</translation>
    </message>
    <message>
        <source>Words that the sessions of the book are searched for</source>
        <translation>記録帳のセッションを探す検索語</translation>
    </message>
    <message>
        <source>Words: track, car, driver, tyre, or what stands in a note</source>
        <translation>検索語: コース、車、ドライバー、タイヤ、メモの言葉</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>処理中</translation>
    </message>
    <message>
        <source>Working out why…</source>
        <translation>要因を計算中…</translation>
    </message>
    <message>
        <source>Write the recipe to a file</source>
        <translation>レシピをファイルに書き出す</translation>
    </message>
    <message>
        <source>Writing %1…</source>
        <translation>%1 を書いています…</translation>
    </message>
    <message>
        <source>Written</source>
        <translation>更新日</translation>
    </message>
    <message>
        <source>Your car:</source>
        <translation>自分の車:</translation>
    </message>
    <message>
        <source>a few draws run away from the others</source>
        <translation>一部の試行がほかから大きく外れています</translation>
    </message>
    <message>
        <source>a lap</source>
        <translation>1周</translation>
    </message>
    <message>
        <source>a line is longer than 1 MiB</source>
        <translation>1 MiBより長い行があります</translation>
    </message>
    <message>
        <source>a number in it is beyond what can be stored</source>
        <translation>扱える範囲を超える数があります</translation>
    </message>
    <message>
        <source>a picture of the video cannot be converted</source>
        <translation>動画の画像を変換できません</translation>
    </message>
    <message>
        <source>a picture of the video cannot be made a still</source>
        <translation>動画の画像を静止画にできません</translation>
    </message>
    <message>
        <source>a rate beside accelerations: kept as it is</source>
        <translation>加速度と並ぶ角速度: そのまま保持</translation>
    </message>
    <message>
        <source>a recipe without a title</source>
        <translation>名前のないレシピ</translation>
    </message>
    <message>
        <source>a segment needs &quot;name&quot;, &quot;kind&quot; (corner or straight), &quot;start_m&quot; &lt; &quot;end_m&quot;, and follows the one before it</source>
        <translation>区間には「name」「kind」（cornerかstraight）、「start_m」&lt;「end_m」が必要で、前の区間に続いていなければなりません</translation>
    </message>
    <message>
        <source>a session</source>
        <translation>セッション</translation>
    </message>
    <message>
        <source>a session of the book</source>
        <translation>記録帳のセッション</translation>
    </message>
    <message>
        <source>a still of the video cannot be read</source>
        <translation>動画の静止画を読めません</translation>
    </message>
    <message>
        <source>a trial needs four clean laps or more</source>
        <translation>セット変更テストにはクリアラップが4周以上必要です</translation>
    </message>
    <message>
        <source>a trial tells of a change of one car with one driver on one track: leave one of them out</source>
        <translation>セット変更テストは、1台の車、1人のドライバー、1つのコースでの変更を調べるものです。どれかを外してください</translation>
    </message>
    <message>
        <source>a usual step is worth</source>
        <translation>標準1段あたりの効果</translation>
    </message>
    <message>
        <source>aero</source>
        <translation>空力</translation>
    </message>
    <message>
        <source>air %1</source>
        <translation>空気 %1</translation>
    </message>
    <message>
        <source>air pressure</source>
        <translation>気圧</translation>
    </message>
    <message>
        <source>air temperature</source>
        <translation>気温</translation>
    </message>
    <message>
        <source>all laps were driven with the same setup</source>
        <translation>すべてのラップが同じセッティングのものです</translation>
    </message>
    <message>
        <source>all positions lie within a few hundredths of a second</source>
        <translation>すべての位置が百分の数秒の間に入っています</translation>
    </message>
    <message>
        <source>altitude</source>
        <translation>標高</translation>
    </message>
    <message>
        <source>an angle beside roll and pitch: kept as it is</source>
        <translation>ロール・ピッチと並ぶ角度: そのまま保持</translation>
    </message>
    <message>
        <source>an entry of &quot;columns&quot; is no object</source>
        <translation>「columns」にオブジェクトでない項目があります</translation>
    </message>
    <message>
        <source>and %1 further channels</source>
        <translation>ほか%1チャンネル</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>ほか%1件</translation>
    </message>
    <message>
        <source>another length than the other laps</source>
        <translation>ほかのラップと長さが違う</translation>
    </message>
    <message>
        <source>another program is writing to the book, which can only be read here</source>
        <translation>ここでは読むことしかできない記録帳に、別のプログラムが書き込んでいます</translation>
    </message>
    <message>
        <source>another window is busy with the book: nothing was changed</source>
        <translation>別のウィンドウが記録帳を使用中です。何も変わっていません</translation>
    </message>
    <message>
        <source>as entered here</source>
        <translation>ここで入力したもの</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>変更なし</translation>
    </message>
    <message>
        <source>as much as now</source>
        <translation>今と同じ</translation>
    </message>
    <message>
        <source>as the time</source>
        <translation>時刻列から</translation>
    </message>
    <message>
        <source>as you say</source>
        <translation>指定どおり</translation>
    </message>
    <message>
        <source>ask for another change</source>
        <translation>別の変更を指定してください</translation>
    </message>
    <message>
        <source>band: where A may be, seen from B</source>
        <translation>帯: Bから見たAの位置の範囲</translation>
    </message>
    <message>
        <source>bar |</source>
        <translation>縦線 |</translation>
    </message>
    <message>
        <source>bar: 95 % interval; hollow: not decided by the data</source>
        <translation>縦棒: 95 % 範囲、白抜き: データだけでは決まらない値</translation>
    </message>
    <message>
        <source>baseline</source>
        <translation>基準</translation>
    </message>
    <message>
        <source>beacon</source>
        <translation>ビーコン</translation>
    </message>
    <message>
        <source>beacon channel of the file</source>
        <translation>ファイルのビーコンチャンネル</translation>
    </message>
    <message>
        <source>begins on the way</source>
        <translation>途中から</translation>
    </message>
    <message>
        <source>behind</source>
        <translation>遅れ</translation>
    </message>
    <message>
        <source>behind the last segment lies the timing line</source>
        <translation>最後の区間の次は計測ラインです</translation>
    </message>
    <message>
        <source>beside a speed from satellites, so taken as the wheels&apos;</source>
        <translation>衛星による速度が別にあるため、車輪速としました</translation>
    </message>
    <message>
        <source>best %1</source>
        <translation>ベスト %1</translation>
    </message>
    <message>
        <source>best segments of %1 put together: %2; laps that differ by chance alone would give %3</source>
        <translation>%1のベスト区間をつなぐと%2、偶然の差だけのラップなら%3</translation>
    </message>
    <message>
        <source>blanks</source>
        <translation>空白</translation>
    </message>
    <message>
        <source>both at the same place%1; B plays %2 times as fast as it was</source>
        <translation>同じ場所で再生%1。Bは実際の%2倍の速さ</translation>
    </message>
    <message>
        <source>both let go at the same moment%1</source>
        <translation>同時にスタート%1</translation>
    </message>
    <message>
        <source>brake</source>
        <translation>ブレーキ</translation>
    </message>
    <message>
        <source>brake pressure</source>
        <translation>ブレーキ圧</translation>
    </message>
    <message>
        <source>brakes %1 earlier</source>
        <translation>ブレーキが%1手前</translation>
    </message>
    <message>
        <source>brakes %1 later</source>
        <translation>ブレーキが%1奥</translation>
    </message>
    <message>
        <source>brakes, %1 before slowest</source>
        <translation>ブレーキ, ボトム手前%1</translation>
    </message>
    <message>
        <source>bringing the maps together</source>
        <translation>マップを合わせています</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>手動</translation>
    </message>
    <message>
        <source>by the positions it counts the other way round: turned, so that forward and left are positive</source>
        <translation>位置によると符号が逆です。前と左が正になるよう反転しました</translation>
    </message>
    <message>
        <source>by the setup sheets</source>
        <translation>セッティングシートによる</translation>
    </message>
    <message>
        <source>cannot be told</source>
        <translation>判定不可</translation>
    </message>
    <message>
        <source>cannot be told from these sessions</source>
        <translation>このセッションからは判定不可</translation>
    </message>
    <message>
        <source>cannot be told: %1</source>
        <translation>判定不可: %1</translation>
    </message>
    <message>
        <source>cannot be told: %1 is too wide to judge by</source>
        <translation>判定できません：%1は幅が広すぎます</translation>
    </message>
    <message>
        <source>car</source>
        <translation>車</translation>
    </message>
    <message>
        <source>car A</source>
        <translation>車A</translation>
    </message>
    <message>
        <source>car B</source>
        <translation>車B</translation>
    </message>
    <message>
        <source>car?</source>
        <translation>車?</translation>
    </message>
    <message>
        <source>carry up to %1 more to the slowest point</source>
        <translation>ボトム速度を最大%1上げる</translation>
    </message>
    <message>
        <source>change</source>
        <translation>変更</translation>
    </message>
    <message>
        <source>channel %1 is damaged in the book and was left out: import the file again</source>
        <translation>チャンネル%1は記録帳の中で壊れているため除外しました。ファイルを読み込み直してください</translation>
    </message>
    <message>
        <source>check its folder and your rights to it</source>
        <translation>フォルダーとその権限を確認してください</translation>
    </message>
    <message>
        <source>check its name and your rights to it</source>
        <translation>名前と権限を確認してください</translation>
    </message>
    <message>
        <source>check that it is there and may be read</source>
        <translation>存在するか、読めるかを確認してください</translation>
    </message>
    <message>
        <source>check that the track file belongs to this track</source>
        <translation>コースファイルがこのコースのものか確認してください</translation>
    </message>
    <message>
        <source>check the disk</source>
        <translation>ディスクを確認してください</translation>
    </message>
    <message>
        <source>check the disk or card</source>
        <translation>ディスクかカードを確認してください</translation>
    </message>
    <message>
        <source>check the folder, your rights to it and the room on the disk</source>
        <translation>フォルダーとその権限、ディスクの空きを確認してください</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>名前を確認してください</translation>
    </message>
    <message>
        <source>check the name and that it may be read</source>
        <translation>名前と読み取りの許可を確認してください</translation>
    </message>
    <message>
        <source>check the name, or begin a book with &quot;lapwright book add&quot; or in the window</source>
        <translation>名前を確認するか、「lapwright book add」またはウィンドウで記録帳を始めてください</translation>
    </message>
    <message>
        <source>check the unit of its speed</source>
        <translation>速度の単位を確認してください</translation>
    </message>
    <message>
        <source>check your rights to its folder</source>
        <translation>フォルダーの権限を確認してください</translation>
    </message>
    <message>
        <source>checking the book</source>
        <translation>記録帳を検査中</translation>
    </message>
    <message>
        <source>checking the samples</source>
        <translation>サンプルを検査中</translation>
    </message>
    <message>
        <source>choice of lap A</source>
        <translation>ラップAの選択</translation>
    </message>
    <message>
        <source>choice of lap B</source>
        <translation>ラップBの選択</translation>
    </message>
    <message>
        <source>choice of your car</source>
        <translation>自分の車の選択</translation>
    </message>
    <message>
        <source>choose a logger&apos;s file, or look into the book&apos;s list</source>
        <translation>ロガーのファイルを選ぶか、記録帳の一覧を見てください</translation>
    </message>
    <message>
        <source>choose a place further away</source>
        <translation>もっと離れた場所を選んでください</translation>
    </message>
    <message>
        <source>choose a place on the lap</source>
        <translation>ラップ上の場所を選んでください</translation>
    </message>
    <message>
        <source>choose a recording with at least one whole lap</source>
        <translation>少なくとも1周分のラップがある走行データを選んでください</translation>
    </message>
    <message>
        <source>choose a session with at least one lap from the timing line to the timing line</source>
        <translation>計測ラインから計測ラインまでのラップが少なくとも1つあるセッションを選んでください</translation>
    </message>
    <message>
        <source>choose a session with whole laps</source>
        <translation>完全な周回のあるセッションを選んでください</translation>
    </message>
    <message>
        <source>choose another file name</source>
        <translation>別のファイル名を選んでください</translation>
    </message>
    <message>
        <source>choose another folder or file name</source>
        <translation>別のフォルダーかファイル名を選んでください</translation>
    </message>
    <message>
        <source>choose another lap</source>
        <translation>別のラップを選んでください</translation>
    </message>
    <message>
        <source>choose another lap, or two sessions of the same track</source>
        <translation>別のラップか、同じコースの2つのセッションを選んでください</translation>
    </message>
    <message>
        <source>choose another name, or add --unite to make the two one</source>
        <translation>別の名前を選ぶか、--uniteを付けて2つを1つにしてください</translation>
    </message>
    <message>
        <source>choose another session</source>
        <translation>別のセッションを選んでください</translation>
    </message>
    <message>
        <source>choose it again where it lies now</source>
        <translation>今ある場所で選び直してください</translation>
    </message>
    <message>
        <source>choose one</source>
        <translation>区間を選んでください</translation>
    </message>
    <message>
        <source>choose sessions of the same track and direction</source>
        <translation>同じコース、同じ向きのセッションを選んでください</translation>
    </message>
    <message>
        <source>choose sessions with and without the change</source>
        <translation>変更ありと変更なしのセッションを選んでください</translation>
    </message>
    <message>
        <source>choose two sessions at the same track</source>
        <translation>同じコースのセッションを2つ選んでください</translation>
    </message>
    <message>
        <source>click</source>
        <translation>クリック</translation>
    </message>
    <message>
        <source>click on &quot;lap&quot; or &quot;time&quot; above them</source>
        <translation>上の「周回」か「時間」をクリック</translation>
    </message>
    <message>
        <source>click on its name</source>
        <translation>名前をクリック</translation>
    </message>
    <message>
        <source>close it there and do it again</source>
        <translation>そちらを閉じてから、もう一度実行してください</translation>
    </message>
    <message>
        <source>close other programs</source>
        <translation>ほかのプログラムを閉じてください</translation>
    </message>
    <message>
        <source>coast less between throttle and brake</source>
        <translation>アクセルとブレーキの間の惰性を減らす</translation>
    </message>
    <message>
        <source>coast with the clutch down from %1 to %2 on the longest straight, and enter the drag area that it gives, 2 × mass × (deceleration − %3 m/s²) / (air density × speed²), good to %4 m²</source>
        <translation>最も長いストレートをクラッチを切って%1から%2まで惰性で走り、2 × 質量 × (減速度 − %3 m/s²) / (空気密度 × 速度²) で求めた空気抵抗面積を入力、精度 %4 m²</translation>
    </message>
    <message>
        <source>column &quot;%1&quot;:</source>
        <translation>列「%1」:</translation>
    </message>
    <message>
        <source>column %1: %2</source>
        <translation>列%1: %2</translation>
    </message>
    <message>
        <source>columns are read as %1 says</source>
        <translation>列は%1のとおりに読み込みました</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>カンマ</translation>
    </message>
    <message>
        <source>compare sessions that were recorded the same way</source>
        <translation>同じ方法で記録したセッションどうしを比較してください</translation>
    </message>
    <message>
        <source>conditions?</source>
        <translation>コンディション?</translation>
    </message>
    <message>
        <source>convert it to 4K or less</source>
        <translation>4K以下に変換してください</translation>
    </message>
    <message>
        <source>convert it to H.264</source>
        <translation>H.264に変換してください</translation>
    </message>
    <message>
        <source>convert it to MP4</source>
        <translation>MP4に変換してください</translation>
    </message>
    <message>
        <source>convert the video to H.264</source>
        <translation>動画をH.264に変換してください</translation>
    </message>
    <message>
        <source>copy it from the camera again</source>
        <translation>カメラからコピーし直してください</translation>
    </message>
    <message>
        <source>copy it from the camera again, or let the camera repair it</source>
        <translation>カメラからコピーし直すか、カメラで修復してください</translation>
    </message>
    <message>
        <source>copy it to a folder that you may write, and open the copy</source>
        <translation>書き込めるフォルダーにコピーし、そのコピーを開いてください</translation>
    </message>
    <message>
        <source>copy the book with all files that begin with its name to a folder that you may write</source>
        <translation>記録帳を、その名前で始まる全ファイルと一緒に、書き込めるフォルダーへコピーしてください</translation>
    </message>
    <message>
        <source>copy the file from the logger again</source>
        <translation>ロガーからファイルをコピーし直してください</translation>
    </message>
    <message>
        <source>cornering as driven</source>
        <translation>実走の旋回</translation>
    </message>
    <message>
        <source>correct it in the setup sheet</source>
        <translation>セッティングシートを直してください</translation>
    </message>
    <message>
        <source>counting of %1</source>
        <translation>%1の採用</translation>
    </message>
    <message>
        <source>course</source>
        <translation>進行方位</translation>
    </message>
    <message>
        <source>d MMM
hh:mm</source>
        <translation>M月d日
hh:mm</translation>
    </message>
    <message>
        <source>d MMM
yyyy</source>
        <translation>yyyy年
M月d日</translation>
    </message>
    <message>
        <source>date</source>
        <translation>日付</translation>
    </message>
    <message>
        <source>date and time of day</source>
        <translation>日付と時刻</translation>
    </message>
    <message>
        <source>date of %1</source>
        <translation>%1の日付</translation>
    </message>
    <message>
        <source>date: %1</source>
        <translation>日付: %1</translation>
    </message>
    <message>
        <source>date?</source>
        <translation>日付?</translation>
    </message>
    <message>
        <source>dates can be read as day/month or month/day: taken as day/month</source>
        <translation>日付が日/月とも月/日とも読めるため、日/月と解釈</translation>
    </message>
    <message>
        <source>days with fractions</source>
        <translation>小数つきの日数</translation>
    </message>
    <message>
        <source>days with fractions by its values</source>
        <translation>値から見て、小数を含む日数</translation>
    </message>
    <message>
        <source>ddmm.mmmm without marks</source>
        <translation>区切りなしddmm.mmmm</translation>
    </message>
    <message>
        <source>ddmmyy without marks</source>
        <translation>区切りなしddmmyy</translation>
    </message>
    <message>
        <source>degrees and minutes without a mark (ddmm.mmmm) by their size</source>
        <translation>大きさから見て、記号なしの度分 (ddmm.mmmm)</translation>
    </message>
    <message>
        <source>degrees by their values</source>
        <translation>値から見て度</translation>
    </message>
    <message>
        <source>degrees fit the speed</source>
        <translation>度が速度と合います</translation>
    </message>
    <message>
        <source>degrees with marks or letters, O is east</source>
        <translation>記号か文字つきの度、Oは東</translation>
    </message>
    <message>
        <source>degrees with marks or letters, O is west</source>
        <translation>記号か文字つきの度、Oは西</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>距離</translation>
    </message>
    <message>
        <source>distance along the track · speed: A solid, B dashed</source>
        <translation>コース上の距離 · 速度: A 実線、B 破線</translation>
    </message>
    <message>
        <source>do it again in a moment</source>
        <translation>少し待ってもう一度実行してください</translation>
    </message>
    <message>
        <source>does not follow the track all the way</source>
        <translation>コースを最後までたどっていない</translation>
    </message>
    <message>
        <source>double-click</source>
        <translation>ダブルクリック</translation>
    </message>
    <message>
        <source>downforce</source>
        <translation>ダウンフォース</translation>
    </message>
    <message>
        <source>downforce area</source>
        <translation>ダウンフォース面積</translation>
    </message>
    <message>
        <source>downforce area, m²</source>
        <translation>ダウンフォース面積, m²</translation>
    </message>
    <message>
        <source>downforce area, m² on a tonne</source>
        <translation>ダウンフォース面積, 1 tあたりm²</translation>
    </message>
    <message>
        <source>downforce at %1</source>
        <translation>%1でのダウンフォース</translation>
    </message>
    <message>
        <source>downforce more than now, m²</source>
        <translation>ダウンフォース増加量, m²</translation>
    </message>
    <message>
        <source>downforce more than now, m² on a tonne</source>
        <translation>今より増えるダウンフォース, 1 tあたりm²</translation>
    </message>
    <message>
        <source>drag</source>
        <translation>空気抵抗</translation>
    </message>
    <message>
        <source>drag +
power</source>
        <translation>抵抗+
パワー</translation>
    </message>
    <message>
        <source>drag + power</source>
        <translation>空気抵抗+パワー</translation>
    </message>
    <message>
        <source>drag and power</source>
        <translation>空気抵抗とパワー</translation>
    </message>
    <message>
        <source>drag area</source>
        <translation>空気抵抗面積</translation>
    </message>
    <message>
        <source>drag area, m²</source>
        <translation>空気抵抗面積, m²</translation>
    </message>
    <message>
        <source>drag area, m² on a tonne</source>
        <translation>空気抵抗面積, 1 tあたりm²</translation>
    </message>
    <message>
        <source>drag at %1</source>
        <translation>%1での空気抵抗</translation>
    </message>
    <message>
        <source>drag it by its name to another&apos;s place</source>
        <translation>名前を別のチャンネルの位置へドラッグ</translation>
    </message>
    <message>
        <source>drag its mark on ribbon or map</source>
        <translation>展開図かマップの印をドラッグ</translation>
    </message>
    <message>
        <source>drag the border between two</source>
        <translation>パネルの境目をドラッグ</translation>
    </message>
    <message>
        <source>drag, or wheel sideways</source>
        <translation>ドラッグ、または横ホイール</translation>
    </message>
    <message>
        <source>drawing the ensemble</source>
        <translation>ばらつきを計算中</translation>
    </message>
    <message>
        <source>drawing the line through all laps</source>
        <translation>全ラップから基準ラインを作成中</translation>
    </message>
    <message>
        <source>drive more laps of each setup</source>
        <translation>それぞれのセッティングでもっと周回してください</translation>
    </message>
    <message>
        <source>drive the baseline once more after the change</source>
        <translation>変更ありの後に、基準でもう一度走ってください</translation>
    </message>
    <message>
        <source>driver</source>
        <translation>ドライバー</translation>
    </message>
    <message>
        <source>driver &amp; rest</source>
        <translation>ドライバー他</translation>
    </message>
    <message>
        <source>driver?</source>
        <translation>ドライバー?</translation>
    </message>
    <message>
        <source>east</source>
        <translation>東方向</translation>
    </message>
    <message>
        <source>end of %1</source>
        <translation>%1の終点</translation>
    </message>
    <message>
        <source>ends on the way</source>
        <translation>途中まで</translation>
    </message>
    <message>
        <source>engine speed</source>
        <translation>エンジン回転数</translation>
    </message>
    <message>
        <source>engine speed was not recorded: how power changes with speed is hardly known, so it and the drag are known less well</source>
        <translation>エンジン回転数の記録がなく、速度によるパワーの変化がほとんどわからないため、パワーと空気抵抗の精度が下がります</translation>
    </message>
    <message>
        <source>engine used</source>
        <translation>エンジン使用率</translation>
    </message>
    <message>
        <source>engine used on straights</source>
        <translation>ストレートのエンジン使用率</translation>
    </message>
    <message>
        <source>enter the power at the wheels from a dynamometer, good to 3 %</source>
        <translation>シャシーダイナモで測った駆動輪出力を3 %以内の精度で入力</translation>
    </message>
    <message>
        <source>enter the spring rates in the setup (suspension travel was recorded)</source>
        <translation>セッティングにホイールレートを入力（サスペンションのストロークは記録済み）</translation>
    </message>
    <message>
        <source>every comma stands before three digits: taken as decimal commas</source>
        <translation>どのカンマの後にも3桁の数字が続くため、小数点のカンマと解釈</translation>
    </message>
    <message>
        <source>every item needs a &quot;name&quot; and a &quot;value&quot;</source>
        <translation>どの項目にも「name」と「value」が必要です</translation>
    </message>
    <message>
        <source>every session has the same setup sheet: write down what is changed, and what it does is told here</source>
        <translation>全セッションのセッティングシートが同じです。変えたものを書いておくと、その影響がここに出ます</translation>
    </message>
    <message>
        <source>exit A</source>
        <translation>脱出A</translation>
    </message>
    <message>
        <source>exit A · B</source>
        <translation>脱出 A · B</translation>
    </message>
    <message>
        <source>export fewer channels</source>
        <translation>書き出すチャンネルを減らしてください</translation>
    </message>
    <message>
        <source>export one session alone</source>
        <translation>セッションを1つだけ書き出してください</translation>
    </message>
    <message>
        <source>export the session as delimited text</source>
        <translation>セッションを区切りテキストで書き出してください</translation>
    </message>
    <message>
        <source>export the session as delimited text, GPX or NMEA 0183</source>
        <translation>セッションを区切りテキスト、GPX、NMEA 0183のどれかで書き出してください</translation>
    </message>
    <message>
        <source>export the session with its lap column, or with positions</source>
        <translation>ラップ列か位置を含めてセッションを書き出してください</translation>
    </message>
    <message>
        <source>export the session with latitude and longitude</source>
        <translation>緯度・経度を含めてセッションを書き出してください</translation>
    </message>
    <message>
        <source>export the session with latitude and longitude, or with a speed</source>
        <translation>緯度・経度か速度を含めてセッションを書き出してください</translation>
    </message>
    <message>
        <source>export the session with latitude and longitude, or with its speed throughout</source>
        <translation>緯度・経度、または途切れのない速度を含めてセッションを書き出してください</translation>
    </message>
    <message>
        <source>export the track as plain GPX 1.1</source>
        <translation>軌跡を通常のGPX 1.1で書き出してください</translation>
    </message>
    <message>
        <source>export the track with times</source>
        <translation>軌跡を時刻つきで書き出してください</translation>
    </message>
    <message>
        <source>export with semicolons or tabs, or with decimal points</source>
        <translation>セミコロンかタブ区切り、または小数点をピリオドにして書き出してください</translation>
    </message>
    <message>
        <source>fastest</source>
        <translation>最速</translation>
    </message>
    <message>
        <source>few clean laps: what differs from lap to lap is hardly known</source>
        <translation>クリアラップが少ないため、ラップごとの違いがほとんどわかりません</translation>
    </message>
    <message>
        <source>fewer than five flying laps</source>
        <translation>5周未満の計測ラップ</translation>
    </message>
    <message>
        <source>fewer than ten flying laps</source>
        <translation>10周未満の計測ラップ</translation>
    </message>
    <message>
        <source>fewer than two track points have a time and a position</source>
        <translation>時刻と位置のある軌跡の点が2つありません</translation>
    </message>
    <message>
        <source>filled: best clean lap; hollow, dashed: median of the clean laps</source>
        <translation>塗り: ベストのクリアラップ、白抜き・破線: クリアラップの中央値</translation>
    </message>
    <message>
        <source>finding the laps</source>
        <translation>ラップを検出中</translation>
    </message>
    <message>
        <source>for now %1 s earlier</source>
        <translation>仮表示、%1 s前の画</translation>
    </message>
    <message>
        <source>for now %1 s later</source>
        <translation>仮表示、%1 s後の画</translation>
    </message>
    <message>
        <source>forces and power in place of figures per kilogram, and mass as a cause</source>
        <translation>1 kgあたりの数値に代わって力とパワーが出て、車重も要因になる</translation>
    </message>
    <message>
        <source>forgetting of %1</source>
        <translation>%1の登録を消す</translation>
    </message>
    <message>
        <source>from %1, which lies beside it</source>
        <translation>横にある%1のもの</translation>
    </message>
    <message>
        <source>from 2026-05-16</source>
        <translation>2026-05-16から</translation>
    </message>
    <message>
        <source>from the book</source>
        <translation>記録帳のもの</translation>
    </message>
    <message>
        <source>from the book, as %1 beside the file has it</source>
        <translation>記録帳のもの、ファイルの横の%1と同じ</translation>
    </message>
    <message>
        <source>from the book; %1 beside the file says otherwise</source>
        <translation>記録帳のもの、ファイルの横の%1とは異なる</translation>
    </message>
    <message>
        <source>front spring rate</source>
        <translation>フロントのホイールレート</translation>
    </message>
    <message>
        <source>full throttle</source>
        <translation>全開</translation>
    </message>
    <message>
        <source>full throttle %1 later</source>
        <translation>全開が%1奥</translation>
    </message>
    <message>
        <source>full throttle %1 sooner</source>
        <translation>全開が%1手前</translation>
    </message>
    <message>
        <source>full throttle, %1 after slowest</source>
        <translation>全開, ボトムから%1</translation>
    </message>
    <message>
        <source>further channel</source>
        <translation>追加チャンネル</translation>
    </message>
    <message>
        <source>gains %1</source>
        <translation>短縮 %1</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>タイム差</translation>
    </message>
    <message>
        <source>gap, s: A ahead is up</source>
        <translation>タイム差, s: 上はAが先行</translation>
    </message>
    <message>
        <source>gear</source>
        <translation>ギア</translation>
    </message>
    <message>
        <source>getting quicker</source>
        <translation>向上中</translation>
    </message>
    <message>
        <source>getting slower</source>
        <translation>低下中</translation>
    </message>
    <message>
        <source>give a session with a whole lap of that track</source>
        <translation>そのコースを1周以上走ったセッションを指定してください</translation>
    </message>
    <message>
        <source>give a shorter one</source>
        <translation>もっと短い名前にしてください</translation>
    </message>
    <message>
        <source>give an MP4, MOV, MKV, AVI or TS file</source>
        <translation>MP4、MOV、MKV、AVI、TSのファイルを指定してください</translation>
    </message>
    <message>
        <source>give another name</source>
        <translation>別の名前にしてください</translation>
    </message>
    <message>
        <source>give it alone</source>
        <translation>単独で指定してください</translation>
    </message>
    <message>
        <source>give it one</source>
        <translation>名前を付けてください</translation>
    </message>
    <message>
        <source>give one</source>
        <translation>名前を付けてください</translation>
    </message>
    <message>
        <source>give the video, not its sound alone</source>
        <translation>音声だけでなく動画を指定してください</translation>
    </message>
    <message>
        <source>grip +
downforce</source>
        <translation>グリップ+
DF</translation>
    </message>
    <message>
        <source>grip + downforce</source>
        <translation>グリップ+ダウンフォース</translation>
    </message>
    <message>
        <source>grip as used</source>
        <translation>使ったグリップ</translation>
    </message>
    <message>
        <source>held: it was %1</source>
        <translation>区間内：実際は%1</translation>
    </message>
    <message>
        <source>hhmmss without marks</source>
        <translation>区切りなしhhmmss</translation>
    </message>
    <message>
        <source>hold tyre, pressure and temperature against the other car&apos;s.</source>
        <translation>タイヤ、空気圧、温度を相手の車と比べる。</translation>
    </message>
    <message>
        <source>hold tyre, pressure and temperature against the other car&apos;s; %1.</source>
        <translation>タイヤ、空気圧、温度を相手の車と比べる。%1。</translation>
    </message>
    <message>
        <source>holding predictions against what was driven</source>
        <translation>予測を実際の走行と比べています</translation>
    </message>
    <message>
        <source>hours, minutes and seconds without marks by its values</source>
        <translation>値から見て、記号なしの時分秒</translation>
    </message>
    <message>
        <source>hours:minutes:seconds</source>
        <translation>時:分:秒</translation>
    </message>
    <message>
        <source>hours:minutes:seconds:parts, %1 a second</source>
        <translation>時:分:秒:端数（1 秒あたり %1）</translation>
    </message>
    <message>
        <source>how the car turns is not known</source>
        <translation>車の旋回がわかりません</translation>
    </message>
    <message>
        <source>how the car turns is not known, so that the picture tells nothing</source>
        <translation>車の旋回がわからないため、映像からは判定できません</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>湿度</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>主に%1で</translation>
    </message>
    <message>
        <source>in %1 and %2</source>
        <translation>主に%1と%2で</translation>
    </message>
    <message>
        <source>in lap</source>
        <translation>インラップ</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>不完全</translation>
    </message>
    <message>
        <source>install the newer version</source>
        <translation>新しいバージョンをインストールしてください</translation>
    </message>
    <message>
        <source>install the whole package of Lapwright</source>
        <translation>Lapwrightのパッケージ全体をインストールしてください</translation>
    </message>
    <message>
        <source>is there</source>
        <translation>あり</translation>
    </message>
    <message>
        <source>it cannot be read</source>
        <translation>読めません</translation>
    </message>
    <message>
        <source>it changes every %1 s, which no lap takes: not used as the number of the lap</source>
        <translation>%1 sごとに変わり、1周にしては短すぎるため、ラップ番号としては使っていません</translation>
    </message>
    <message>
        <source>it does not follow the positions as the %1 acceleration would: its axis points elsewhere, kept without a meaning</source>
        <translation>位置の動きに対して%1の加速度のようには変化しません。軸の向きが違うため、意味を付けずに残しました</translation>
    </message>
    <message>
        <source>it does not follow the speed between the positions</source>
        <translation>位置から求めた速度に沿って変化していません</translation>
    </message>
    <message>
        <source>it fits the positions where one is %1 %2: taken so</source>
        <translation>1 を %1 %2 とすると位置に合います。そのように読みました</translation>
    </message>
    <message>
        <source>it reads %1 times the speed between the positions</source>
        <translation>位置から求めた速度の%1倍になっています</translation>
    </message>
    <message>
        <source>it would be more than the two cars allow</source>
        <translation>この2台でありうる大きさを超えています</translation>
    </message>
    <message>
        <source>its O is east</source>
        <translation>Oは東</translation>
    </message>
    <message>
        <source>its O is west</source>
        <translation>Oは西</translation>
    </message>
    <message>
        <source>its cells bear the letters of a %1</source>
        <translation>セルに%1の文字が付いています</translation>
    </message>
    <message>
        <source>its corners are not those of %1</source>
        <translation>コーナーが%1のものと違います</translation>
    </message>
    <message>
        <source>its corners stay as the program finds them</source>
        <translation>コーナーはプログラムが見つけたままになります</translation>
    </message>
    <message>
        <source>its laps are too short or too long to be compared</source>
        <translation>ラップが比較するには短すぎるか長すぎます</translation>
    </message>
    <message>
        <source>its laps are too short or too long to be laps</source>
        <translation>ラップとしては短すぎるか長すぎます</translation>
    </message>
    <message>
        <source>its name does not say what it is, but it follows %1 in %2</source>
        <translation>名前からはわかりませんが、%2で%1に従います</translation>
    </message>
    <message>
        <source>its name does not say what it is: in %1 it may be the %2, which nothing else in the file confirms, kept without a meaning</source>
        <translation>名前では何かわかりません。%1として見ると%2かもしれませんが、ファイルに裏付けがないため、意味を付けずに残しました</translation>
    </message>
    <message>
        <source>its name does not say what it is: in %1 it moves as the %2 does, kept without a meaning</source>
        <translation>名前では何かわかりません。%1として見ると%2と同じように動きますが、意味を付けずに残しました</translation>
    </message>
    <message>
        <source>its name does not say what it is: taken as the %1 in %2, because it follows %3</source>
        <translation>名前では何かわかりませんが、%3に沿って動くため、%1（%2）と解釈</translation>
    </message>
    <message>
        <source>its name is not known, but it moves as %1 does</source>
        <translation>名前は不明ですが、%1と同じように動きます</translation>
    </message>
    <message>
        <source>its name is not known, but its readings advance evenly like a clock&apos;s</source>
        <translation>名前は不明ですが、値が時計のように一定に進みます</translation>
    </message>
    <message>
        <source>its name is not known, but its values look like a position</source>
        <translation>名前は不明ですが、値が位置のように見えます</translation>
    </message>
    <message>
        <source>its name is not known: kept as it is</source>
        <translation>名前は不明: そのまま保持</translation>
    </message>
    <message>
        <source>its name says %1, but its cells cannot be read as that: not used</source>
        <translation>名前は%1ですが、セルをそのように読めないため使っていません</translation>
    </message>
    <message>
        <source>its name says an axis and no direction: taken as the %1 one</source>
        <translation>名前は軸だけで方向がないため、%1と解釈</translation>
    </message>
    <message>
        <source>its name says on which side of zero it lies</source>
        <translation>名前から、0のどちら側かがわかります</translation>
    </message>
    <message>
        <source>its sentences bear no checksum: damage in them cannot be found</source>
        <translation>センテンスにチェックサムがないため、破損を見つけられません</translation>
    </message>
    <message>
        <source>its unit does not measure its meaning</source>
        <translation>単位が意味と合いません</translation>
    </message>
    <message>
        <source>its unit is written as %1, but it fits the positions in %2</source>
        <translation>単位は%1と書かれていますが、位置と合うのは%2です</translation>
    </message>
    <message>
        <source>its values go beyond 100, so that they are no percent: kept as written, without a meaning</source>
        <translation>値が100を超え、パーセントではないため、書かれたまま意味を付けずに残しました</translation>
    </message>
    <message>
        <source>its values look like degrees: taken as %1</source>
        <translation>値が度のように見えるため、%1と解釈</translation>
    </message>
    <message>
        <source>join of %1</source>
        <translation>%1の結合</translation>
    </message>
    <message>
        <source>keep sessions with clean laps of that car in the book</source>
        <translation>その車のクリアラップがあるセッションを記録帳に入れてください</translation>
    </message>
    <message>
        <source>keeping of a prediction</source>
        <translation>予測の保存</translation>
    </message>
    <message>
        <source>kind of %1</source>
        <translation>%1の種類</translation>
    </message>
    <message>
        <source>lap</source>
        <translation>周回</translation>
    </message>
    <message>
        <source>lap %1</source>
        <translation>%1周目</translation>
    </message>
    <message>
        <source>lap %1 leaves the track on which A is driven</source>
        <translation>%1周目はAの走ったコースから外れています</translation>
    </message>
    <message>
        <source>lap %1 leaves the track on which the two are compared</source>
        <translation>%1周目は、2つを比較しているコースから外れています</translation>
    </message>
    <message>
        <source>lap %1 of %2</source>
        <translation>%2の%1周目</translation>
    </message>
    <message>
        <source>lap %1 · %2</source>
        <translation>%1周目 · %2</translation>
    </message>
    <message>
        <source>lap %1 · %2 (%3)</source>
        <translation>%1周目 · %2 (%3)</translation>
    </message>
    <message>
        <source>lap %1, %2, %3</source>
        <translation>%1周目, %2, %3</translation>
    </message>
    <message>
        <source>lap column of the file</source>
        <translation>ファイルのラップ列</translation>
    </message>
    <message>
        <source>lap number</source>
        <translation>ラップ番号</translation>
    </message>
    <message>
        <source>lap time</source>
        <translation>ラップタイム</translation>
    </message>
    <message>
        <source>lap time against now, s</source>
        <translation>現状とのラップタイム差, s</translation>
    </message>
    <message>
        <source>lap, to be A</source>
        <translation>ラップ、Aに選ぶ</translation>
    </message>
    <message>
        <source>lap, to be B</source>
        <translation>ラップ、Bに選ぶ</translation>
    </message>
    <message>
        <source>laps behind A and B</source>
        <translation>A・Bの背景のラップ</translation>
    </message>
    <message>
        <source>lapwright laps lists them</source>
        <translation>「lapwright laps」で一覧を表示できます</translation>
    </message>
    <message>
        <source>lateral</source>
        <translation>横方向</translation>
    </message>
    <message>
        <source>lateral acceleration</source>
        <translation>横G</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>緯度</translation>
    </message>
    <message>
        <source>latitude and longitude are the position: kept as it is</source>
        <translation>位置は緯度と経度です: そのまま保持</translation>
    </message>
    <message>
        <source>latitude and longitude fit the speed only when they are exchanged: taken so</source>
        <translation>緯度と経度を入れ替えたときだけ速度と合うため、入れ替えて解釈</translation>
    </message>
    <message>
        <source>latitudes end at 90°: latitude and longitude are taken exchanged</source>
        <translation>緯度は90°までなので、緯度と経度を入れ替えて解釈</translation>
    </message>
    <message>
        <source>leads nowhere</source>
        <translation>先へ進んでいない</translation>
    </message>
    <message>
        <source>learning has stopped</source>
        <translation>習熟が停止</translation>
    </message>
    <message>
        <source>learning how both drivers use their cars</source>
        <translation>両ドライバーの車の使い方を推定中</translation>
    </message>
    <message>
        <source>learning the noise</source>
        <translation>ノイズを推定中</translation>
    </message>
    <message>
        <source>learning what the cars can do</source>
        <translation>車の特性を推定中</translation>
    </message>
    <message>
        <source>leave one of the two out</source>
        <translation>どちらかを外してください</translation>
    </message>
    <message>
        <source>leave the stills out</source>
        <translation>静止画を外してください</translation>
    </message>
    <message>
        <source>leave the track file out: the program finds a timing line</source>
        <translation>コースファイルを使わないでください。プログラムが計測ラインを見つけます</translation>
    </message>
    <message>
        <source>left</source>
        <translation>左</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>対象外</translation>
    </message>
    <message>
        <source>let the program save what can be read</source>
        <translation>読める部分をプログラムに救出させてください</translation>
    </message>
    <message>
        <source>letter E or W</source>
        <translation>文字EかW</translation>
    </message>
    <message>
        <source>letter N or S</source>
        <translation>文字NかS</translation>
    </message>
    <message>
        <source>letter, O is east</source>
        <translation>文字、Oは東</translation>
    </message>
    <message>
        <source>letter, O is west</source>
        <translation>文字、Oは西</translation>
    </message>
    <message>
        <source>letters beside the %1</source>
        <translation>%1に添えられた文字</translation>
    </message>
    <message>
        <source>level</source>
        <translation>差なし</translation>
    </message>
    <message>
        <source>lift to brakes, s</source>
        <translation>オフ→ブレーキ, s</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>たぶん</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>ライン %1</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>経度</translation>
    </message>
    <message>
        <source>longitudinal</source>
        <translation>前後方向</translation>
    </message>
    <message>
        <source>longitudinal acceleration</source>
        <translation>前後G</translation>
    </message>
    <message>
        <source>look at the book&apos;s list again</source>
        <translation>記録帳の一覧をもう一度確認してください</translation>
    </message>
    <message>
        <source>look at the book&apos;s list for the names that it has</source>
        <translation>記録帳にある名前を一覧で確認してください</translation>
    </message>
    <message>
        <source>look at the book&apos;s predictions</source>
        <translation>記録帳の予測を見てください</translation>
    </message>
    <message>
        <source>look at the permissions of the file</source>
        <translation>ファイルの権限を確認してください</translation>
    </message>
    <message>
        <source>look for a missing comma, quote or brace</source>
        <translation>カンマ、引用符、かっこの抜けを探してください</translation>
    </message>
    <message>
        <source>look for up to %1 at the exit of the corner before it</source>
        <translation>手前のコーナーの脱出で最大%1の上積みを探す</translation>
    </message>
    <message>
        <source>look whether it was moved</source>
        <translation>移動していないか確認してください</translation>
    </message>
    <message>
        <source>looked at</source>
        <translation>確認済み</translation>
    </message>
    <message>
        <source>loses %1</source>
        <translation>損失 %1</translation>
    </message>
    <message>
        <source>lost in shifts, s</source>
        <translation>シフトの損失, s</translation>
    </message>
    <message>
        <source>make room on the disk and do it again</source>
        <translation>ディスクを空けて、もう一度実行してください</translation>
    </message>
    <message>
        <source>make room on the disk, or copy the book to another disk</source>
        <translation>ディスクを空けるか、記録帳を別のディスクにコピーしてください</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>車重</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>実測</translation>
    </message>
    <message>
        <source>measured pressure, standard temperature</source>
        <translation>測定した気圧、標準気温</translation>
    </message>
    <message>
        <source>measured temperature and pressure</source>
        <translation>測定した気温と気圧</translation>
    </message>
    <message>
        <source>measured temperature, pressure and humidity</source>
        <translation>測定した気温、気圧、湿度</translation>
    </message>
    <message>
        <source>measured temperature, standard pressure</source>
        <translation>測定した気温、標準気圧</translation>
    </message>
    <message>
        <source>measuring both laps</source>
        <translation>両ラップを測定中</translation>
    </message>
    <message>
        <source>measuring every lap</source>
        <translation>全ラップを測定中</translation>
    </message>
    <message>
        <source>microseconds since 1970 by their size</source>
        <translation>大きさから見て、1970年からのマイクロ秒</translation>
    </message>
    <message>
        <source>milliseconds since 1970 by their size</source>
        <translation>大きさから見て、1970年からのミリ秒</translation>
    </message>
    <message>
        <source>min/top A</source>
        <translation>最低/最高A</translation>
    </message>
    <message>
        <source>minutes of arc by their size</source>
        <translation>大きさから見て、角度の分</translation>
    </message>
    <message>
        <source>missed: it was %1</source>
        <translation>区間外：実際は%1</translation>
    </message>
    <message>
        <source>move the braking point up to %1 later</source>
        <translation>ブレーキングポイントを最大%1奥にする</translation>
    </message>
    <message>
        <source>move the pointer</source>
        <translation>ポインターを動かす</translation>
    </message>
    <message>
        <source>move the timing line first</source>
        <translation>先に計測ラインを動かしてください</translation>
    </message>
    <message>
        <source>move the timing line to move this end</source>
        <translation>この端を動かすには計測ラインを動かしてください</translation>
    </message>
    <message>
        <source>much slower than the session&apos;s other lap</source>
        <translation>セッションのもう1つのラップよりずっと遅い</translation>
    </message>
    <message>
        <source>m² on a tonne</source>
        <translation>m²/t</translation>
    </message>
    <message>
        <source>name %1</source>
        <translation>名前 %1</translation>
    </message>
    <message>
        <source>name a recipe</source>
        <translation>レシピを指定してください</translation>
    </message>
    <message>
        <source>name a single file</source>
        <translation>ファイルを1つ指定してください</translation>
    </message>
    <message>
        <source>name a video file</source>
        <translation>動画ファイルを指定してください</translation>
    </message>
    <message>
        <source>name another file</source>
        <translation>別のファイルを指定してください</translation>
    </message>
    <message>
        <source>name of a set</source>
        <translation>組の名前</translation>
    </message>
    <message>
        <source>name one of its corners as the comparison does</source>
        <translation>比較に出てくるコーナーの名前を指定してください</translation>
    </message>
    <message>
        <source>name the other book&apos;s file</source>
        <translation>もう一方の記録帳のファイルを指定してください</translation>
    </message>
    <message>
        <source>name what will be changed, as it will be written then</source>
        <translation>変更する項目を、そのとき書く形で指定してください</translation>
    </message>
    <message>
        <source>named &quot;%1&quot;</source>
        <translation>名前は「%1」</translation>
    </message>
    <message>
        <source>named &quot;%1&quot;; no unit written, %2 fits %3 to %4 %</source>
        <translation>名前は「%1」、単位の記載なし、%2が%3と%4 %以内で合います</translation>
    </message>
    <message>
        <source>names of %1</source>
        <translation>%1の名前</translation>
    </message>
    <message>
        <source>nanoseconds since 1970 by their size</source>
        <translation>大きさから見て、1970年からのナノ秒</translation>
    </message>
    <message>
        <source>needs mass</source>
        <translation>車重が必要</translation>
    </message>
    <message>
        <source>neither engine speed nor speed was recorded for the sound to follow</source>
        <translation>音声と照らし合わせるエンジン回転数も速度も記録されていません</translation>
    </message>
    <message>
        <source>neither pedal, s</source>
        <translation>ペダル操作なし, s</translation>
    </message>
    <message>
        <source>neither positions nor a speed were recorded</source>
        <translation>位置も速度も記録されていません</translation>
    </message>
    <message>
        <source>new name of %1</source>
        <translation>%1の新しい名前</translation>
    </message>
    <message>
        <source>next test, %1</source>
        <translation>次のテスト、%1</translation>
    </message>
    <message>
        <source>no RMC or ZDA sentence gives the date</source>
        <translation>日付を示すRMCまたはZDAセンテンスがありません</translation>
    </message>
    <message>
        <source>no change</source>
        <translation>変更なし</translation>
    </message>
    <message>
        <source>no clean lap</source>
        <translation>クリアラップなし</translation>
    </message>
    <message>
        <source>no corner could be found</source>
        <translation>コーナーが見つかりません</translation>
    </message>
    <message>
        <source>no engine is heard that follows the recording</source>
        <translation>走行データに沿ったエンジン音が聞き取れません</translation>
    </message>
    <message>
        <source>no lap</source>
        <translation>ラップ不成立</translation>
    </message>
    <message>
        <source>no lap follows the track all the way round</source>
        <translation>コースを1周たどるラップがありません</translation>
    </message>
    <message>
        <source>no laps</source>
        <translation>ラップなし</translation>
    </message>
    <message>
        <source>no line</source>
        <translation>なし</translation>
    </message>
    <message>
        <source>no line names the columns: their meanings are guessed by their values</source>
        <translation>列名の行がないため、意味は値から推定しました</translation>
    </message>
    <message>
        <source>no longer where it was</source>
        <translation>元の場所にありません</translation>
    </message>
    <message>
        <source>no mass was given: figures are per kilogram</source>
        <translation>車重が入力されていないため、数値は1 kgあたりです</translation>
    </message>
    <message>
        <source>no offset stands out at which the engine that is heard follows the recording</source>
        <translation>エンジン音が走行データに合うずれをはっきり決められません</translation>
    </message>
    <message>
        <source>no offset stands out at which the picture turns as the car does</source>
        <translation>映像の動きが車の旋回に合うずれをはっきり決められません</translation>
    </message>
    <message>
        <source>no other clock stands in the file, and it advances evenly from row to row</source>
        <translation>ほかに時計がなく、行ごとに一定に進みます</translation>
    </message>
    <message>
        <source>no place is passed twice in the same direction, so there are no laps</source>
        <translation>同じ向きに2回通る場所がないため、ラップがありません</translation>
    </message>
    <message>
        <source>no positions, %1 speed</source>
        <translation>位置なし、%1の速度</translation>
    </message>
    <message>
        <source>no positions, no speed</source>
        <translation>位置なし、速度なし</translation>
    </message>
    <message>
        <source>no positions: distance is integrated speed, brought to the lap&apos;s length and aligned on cornering, so error bars are wider and the map is a sketch%1</source>
        <translation>位置がありません。距離は速度を積算し、1周の長さに合わせ、旋回で位置を合わせたものです。そのため誤差の範囲が広く、マップは略図です%1</translation>
    </message>
    <message>
        <source>no segment lies there</source>
        <translation>そこに区間はありません</translation>
    </message>
    <message>
        <source>no session of %1 tells anything of the car: %2</source>
        <translation>%1のどのセッションからも車の特性がわかりません: %2</translation>
    </message>
    <message>
        <source>no session since has this setup on this track</source>
        <translation>その後、このコースでこのセッティングのセッションはありません</translation>
    </message>
    <message>
        <source>no session&apos;s straights tell power and drag</source>
        <translation>どのセッションのストレートからも、パワーと空気抵抗がわかりません</translation>
    </message>
    <message>
        <source>no sound of %1: it plays slower than it was</source>
        <translation>%1の音声なし: 実際より遅い再生中</translation>
    </message>
    <message>
        <source>no sound of B: it is stretched; let both go on one clock to hear it</source>
        <translation>Bの音声なし: 伸縮して再生中。同時スタートにすると聞こえます</translation>
    </message>
    <message>
        <source>no sound: %1</source>
        <translation>音声なし: %1</translation>
    </message>
    <message>
        <source>no stretch at full throttle could be found</source>
        <translation>全開のところが見つかりません</translation>
    </message>
    <message>
        <source>no table of numbers is found in this file</source>
        <translation>このファイルに数値の表が見つかりません</translation>
    </message>
    <message>
        <source>no two sentences give a time and a position</source>
        <translation>時刻と位置を示すセンテンスが2つありません</translation>
    </message>
    <message>
        <source>no unit</source>
        <translation>単位なし</translation>
    </message>
    <message>
        <source>no unit is written; %1</source>
        <translation>単位が書かれていません。%1</translation>
    </message>
    <message>
        <source>no unit written, Pa by its values</source>
        <translation>単位の記載なし、値から見てPa</translation>
    </message>
    <message>
        <source>no unit written, bar by its values</source>
        <translation>単位の記載なし、値から見てbar</translation>
    </message>
    <message>
        <source>no unit written, beyond 100</source>
        <translation>単位の記載なし、100を超えます</translation>
    </message>
    <message>
        <source>no unit written, degrees by its values</source>
        <translation>単位の記載なし、値から見て度</translation>
    </message>
    <message>
        <source>no unit written, g by its values</source>
        <translation>単位の記載なし、値から見てg</translation>
    </message>
    <message>
        <source>no unit written, hPa by its values</source>
        <translation>単位の記載なし、値から見てhPa</translation>
    </message>
    <message>
        <source>no unit written, kPa by its values</source>
        <translation>単位の記載なし、値から見てkPa</translation>
    </message>
    <message>
        <source>no unit written, m/s² by its values</source>
        <translation>単位の記載なし、値から見てm/s²</translation>
    </message>
    <message>
        <source>no unit written, mm by its values</source>
        <translation>単位の記載なし、値から見てmm</translation>
    </message>
    <message>
        <source>no unit written, ms by its steps</source>
        <translation>単位の記載なし、刻みから見てms</translation>
    </message>
    <message>
        <source>no unit written, ms by its values</source>
        <translation>単位の記載なし、値から見てms</translation>
    </message>
    <message>
        <source>no unit written, parts of one by its values</source>
        <translation>単位の記載なし、値から見て1に対する割合</translation>
    </message>
    <message>
        <source>no unit written, percent by its values</source>
        <translation>単位の記載なし、値から見てパーセント</translation>
    </message>
    <message>
        <source>no unit written, rpm by its values</source>
        <translation>単位の記載なし、値から見てrpm</translation>
    </message>
    <message>
        <source>no unit written, seconds by its values</source>
        <translation>単位の記載なし、値から見て秒</translation>
    </message>
    <message>
        <source>no unit written, taken as bar</source>
        <translation>単位の記載なし、barとしました</translation>
    </message>
    <message>
        <source>no unit written, taken as degrees</source>
        <translation>単位の記載なし、度としました</translation>
    </message>
    <message>
        <source>no unit written, taken as g</source>
        <translation>単位の記載なし、gとしました</translation>
    </message>
    <message>
        <source>no unit written, taken as km/h</source>
        <translation>単位の記載なし、km/hとしました</translation>
    </message>
    <message>
        <source>no unit written, taken as metres</source>
        <translation>単位の記載なし、メートルとしました</translation>
    </message>
    <message>
        <source>no unit written, taken as ms</source>
        <translation>単位の記載なし、msとしました</translation>
    </message>
    <message>
        <source>no unit written, taken as percent</source>
        <translation>単位の記載なし、パーセントとしました</translation>
    </message>
    <message>
        <source>no unit written, taken as psi</source>
        <translation>単位の記載なし、psiとしました</translation>
    </message>
    <message>
        <source>no unit written, taken as rad/s</source>
        <translation>単位の記載なし、rad/sとしました</translation>
    </message>
    <message>
        <source>no unit written, taken as rpm</source>
        <translation>単位の記載なし、rpmとしました</translation>
    </message>
    <message>
        <source>no unit written, taken as seconds</source>
        <translation>単位の記載なし、秒としました</translation>
    </message>
    <message>
        <source>no unit written, taken as °C</source>
        <translation>単位の記載なし、°Cとしました</translation>
    </message>
    <message>
        <source>no unit written, thousands a minute by its values</source>
        <translation>単位の記載なし、値から見て毎分千回転</translation>
    </message>
    <message>
        <source>no unit written, thousandths of g by its values</source>
        <translation>単位の記載なし、値から見てgの千分の一</translation>
    </message>
    <message>
        <source>no unit written, °/s by its values</source>
        <translation>単位の記載なし、値から見て°/s</translation>
    </message>
    <message>
        <source>no unit written, µs by its size</source>
        <translation>単位の記載なし、大きさから見てµs</translation>
    </message>
    <message>
        <source>no unit written, µs by its steps</source>
        <translation>単位の記載なし、刻みから見てµs</translation>
    </message>
    <message>
        <source>none</source>
        <translation>なし</translation>
    </message>
    <message>
        <source>none has a clean lap.</source>
        <translation>クリアラップがありません。</translation>
    </message>
    <message>
        <source>north</source>
        <translation>北方向</translation>
    </message>
    <message>
        <source>not every session has the car&apos;s mass: areas and power are on a tonne</source>
        <translation>車重のないセッションがあるため、面積とパワーは1 tあたりです</translation>
    </message>
    <message>
        <source>not every session says when it was driven: they are taken in the order given</source>
        <translation>走行日時のないセッションがあるため、与えられた順に並べます</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>未入力</translation>
    </message>
    <message>
        <source>not in step: move the offset until the picture is where the cursor is</source>
        <translation>未同期: 画がカーソルの場所になるまでずれを動かしてください</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>不明</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>読み込まない</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>使わない</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>未判定</translation>
    </message>
    <message>
        <source>not yet: %1</source>
        <translation>未判定：%1</translation>
    </message>
    <message>
        <source>note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>note on %1</source>
        <translation>%1のメモ</translation>
    </message>
    <message>
        <source>note on lap %1</source>
        <translation>%1周目のメモ</translation>
    </message>
    <message>
        <source>note on the session</source>
        <translation>セッションのメモ</translation>
    </message>
    <message>
        <source>note that was being typed</source>
        <translation>入力中だったメモ</translation>
    </message>
    <message>
        <source>nowhere in particular</source>
        <translation>特定の場所によらず</translation>
    </message>
    <message>
        <source>number</source>
        <translation>数値</translation>
    </message>
    <message>
        <source>number with its unit</source>
        <translation>単位つきの数値</translation>
    </message>
    <message>
        <source>of it
%1</source>
        <translation>うち
%1</translation>
    </message>
    <message>
        <source>of it %1</source>
        <translation>うち%1</translation>
    </message>
    <message>
        <source>of it aero</source>
        <translation>空力計（再掲）</translation>
    </message>
    <message>
        <source>offset of the video of %1</source>
        <translation>%1の動画のずれ</translation>
    </message>
    <message>
        <source>on the straights</source>
        <translation>主にストレートで</translation>
    </message>
    <message>
        <source>one part of %1</source>
        <translation>%1の片方</translation>
    </message>
    <message>
        <source>one session</source>
        <translation>セッション1件</translation>
    </message>
    <message>
        <source>one session alone: what another setup changes is told from two on</source>
        <translation>セッションが1つだけです。セット変更の影響は2つ以上あるとわかります</translation>
    </message>
    <message>
        <source>one session has positions by latitude and longitude, the other none or in metres of its own</source>
        <translation>一方のセッションの位置は緯度・経度ですが、もう一方は位置がないか、独自のメートル座標です</translation>
    </message>
    <message>
        <source>only grip and downforce together can be told</source>
        <translation>グリップとダウンフォースは、合わせた分しか判定できません</translation>
    </message>
    <message>
        <source>open it again</source>
        <translation>もう一度開いてください</translation>
    </message>
    <message>
        <source>open it as it is</source>
        <translation>そのまま開いてください</translation>
    </message>
    <message>
        <source>open its file again</source>
        <translation>そのファイルをもう一度開いてください</translation>
    </message>
    <message>
        <source>open the throttle up to %1 sooner</source>
        <translation>アクセルを最大%1手前で開ける</translation>
    </message>
    <message>
        <source>other</source>
        <translation>その他</translation>
    </message>
    <message>
        <source>out lap</source>
        <translation>アウトラップ</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>%1超</translation>
    </message>
    <message>
        <source>parting places</source>
        <translation>位置のセルを分割中</translation>
    </message>
    <message>
        <source>parts of a day by its steps</source>
        <translation>刻みから見て1日に対する割合</translation>
    </message>
    <message>
        <source>parts of one</source>
        <translation>1に対する割合</translation>
    </message>
    <message>
        <source>placing both laps on one line</source>
        <translation>両ラップを1本の基準ラインに配置中</translation>
    </message>
    <message>
        <source>placing further laps</source>
        <translation>背景のラップを配置中</translation>
    </message>
    <message>
        <source>placing laps by their cornering</source>
        <translation>旋回からラップの位置を決定中</translation>
    </message>
    <message>
        <source>placing the positions</source>
        <translation>位置を配置中</translation>
    </message>
    <message>
        <source>point</source>
        <translation>ピリオド</translation>
    </message>
    <message>
        <source>position</source>
        <translation>位置</translation>
    </message>
    <message>
        <source>position accuracy</source>
        <translation>測位精度</translation>
    </message>
    <message>
        <source>position dilution</source>
        <translation>位置のDOP</translation>
    </message>
    <message>
        <source>power</source>
        <translation>パワー</translation>
    </message>
    <message>
        <source>power at the wheels</source>
        <translation>駆動輪出力</translation>
    </message>
    <message>
        <source>power at the wheels, W on a kg</source>
        <translation>駆動輪出力, 1 kgあたりW</translation>
    </message>
    <message>
        <source>power is the mean over the engine speeds of the straights, %1 to %2 rpm; over them it hardly changes</source>
        <translation>パワーはストレートのエンジン回転数%1～%2 rpmでの平均で、この範囲ではほとんど変わりません</translation>
    </message>
    <message>
        <source>power is the mean over the engine speeds of the straights, %1 to %2 rpm; over them it runs from %3 to %4 % of that</source>
        <translation>パワーはストレートのエンジン回転数%1～%2 rpmでの平均で、この範囲ではその%3～%4 %です</translation>
    </message>
    <message>
        <source>press a key here</source>
        <translation>ここでキーを押す</translation>
    </message>
    <message>
        <source>prior</source>
        <translation>前提</translation>
    </message>
    <message>
        <source>program&apos;s word on %1</source>
        <translation>%1を自動判定に戻す</translation>
    </message>
    <message>
        <source>proposed by the program on a fast straight at steady speed</source>
        <translation>速度の安定した高速のストレートにプログラムが提案</translation>
    </message>
    <message>
        <source>putting readings side by side</source>
        <translation>値を横に並べています</translation>
    </message>
    <message>
        <source>putting the sessions together</source>
        <translation>セッションをまとめて計算中</translation>
    </message>
    <message>
        <source>quicker at the exit by %1</source>
        <translation>脱出で%1速い</translation>
    </message>
    <message>
        <source>quicker at the slowest point by %1</source>
        <translation>ボトムで%1速い</translation>
    </message>
    <message>
        <source>quicker at the top by %1</source>
        <translation>最高速で%1速い</translation>
    </message>
    <message>
        <source>quicker onto it by %1</source>
        <translation>進入で%1速い</translation>
    </message>
    <message>
        <source>quicker there in %1 % of all pairs of clean laps</source>
        <translation>クリアラップの組み合わせの%1 %でここが速い</translation>
    </message>
    <message>
        <source>quickest clean lap %1, %2</source>
        <translation>最速クリアラップ %1、%2</translation>
    </message>
    <message>
        <source>radians fit the speed</source>
        <translation>ラジアンが速度と合います</translation>
    </message>
    <message>
        <source>read as %1</source>
        <translation>読み取り値 %1</translation>
    </message>
    <message>
        <source>reading characters</source>
        <translation>文字を読み込み中</translation>
    </message>
    <message>
        <source>reading from the book</source>
        <translation>記録帳から読み込み中</translation>
    </message>
    <message>
        <source>reading sentences</source>
        <translation>センテンスを読み込み中</translation>
    </message>
    <message>
        <source>reading the sessions</source>
        <translation>セッションを読み込み中</translation>
    </message>
    <message>
        <source>reading track points</source>
        <translation>軌跡の点を読み込み中</translation>
    </message>
    <message>
        <source>rear spring rate</source>
        <translation>リアのホイールレート</translation>
    </message>
    <message>
        <source>record GGA or RMC sentences with a fix</source>
        <translation>測位済みのGGAかRMCセンテンスを記録してください</translation>
    </message>
    <message>
        <source>record more clean laps at full effort</source>
        <translation>全力のクリアラップをもっと記録してください</translation>
    </message>
    <message>
        <source>removal of %1</source>
        <translation>%1を外す</translation>
    </message>
    <message>
        <source>removal of the pairing %1 against %2</source>
        <translation>ペアを外す: %1対%2</translation>
    </message>
    <message>
        <source>removed on %1</source>
        <translation>%1に外した</translation>
    </message>
    <message>
        <source>rename by hand</source>
        <translation>手動で名前を変えてください</translation>
    </message>
    <message>
        <source>return of %1</source>
        <translation>%1を戻す</translation>
    </message>
    <message>
        <source>right</source>
        <translation>右</translation>
    </message>
    <message>
        <source>right click</source>
        <translation>右クリック</translation>
    </message>
    <message>
        <source>rows have more cells than there are names, as if commas were decimal marks and delimiters at once</source>
        <translation>行のセルが列名より多く、カンマが小数点と区切りの両方に使われているようです</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>s a lap</source>
        <translation>s/周</translation>
    </message>
    <message>
        <source>said by %1</source>
        <translation>%1による指定</translation>
    </message>
    <message>
        <source>satellites</source>
        <translation>衛星数</translation>
    </message>
    <message>
        <source>say what the time column is counted in</source>
        <translation>時刻の列の単位を指定してください</translation>
    </message>
    <message>
        <source>say which session was driven with it</source>
        <translation>どのセッションで使ったか指定してください</translation>
    </message>
    <message>
        <source>seconds by its steps</source>
        <translation>刻みから見て秒</translation>
    </message>
    <message>
        <source>seconds since 1970 by their size</source>
        <translation>大きさから見て、1970年からの秒</translation>
    </message>
    <message>
        <source>see README.md for what a setup sheet holds</source>
        <translation>セッティングシートの内容はREADME.mdを参照してください</translation>
    </message>
    <message>
        <source>see README.md for what a track file holds</source>
        <translation>コースファイルの内容はREADME.mdを参照してください</translation>
    </message>
    <message>
        <source>segment</source>
        <translation>区間</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>セミコロン</translation>
    </message>
    <message>
        <source>separating the causes</source>
        <translation>要因を切り分け中</translation>
    </message>
    <message>
        <source>session</source>
        <translation>セッション</translation>
    </message>
    <message>
        <source>session of a prediction</source>
        <translation>予測のセッション</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>除外</translation>
    </message>
    <message>
        <source>set aside by hand</source>
        <translation>手動で除外</translation>
    </message>
    <message>
        <source>set aside by hand: %1</source>
        <translation>手動で除外: %1</translation>
    </message>
    <message>
        <source>set by hand</source>
        <translation>手動で設定</translation>
    </message>
    <message>
        <source>setting aside of %1</source>
        <translation>%1の除外</translation>
    </message>
    <message>
        <source>setup</source>
        <translation>セッティング</translation>
    </message>
    <message>
        <source>setup of %1</source>
        <translation>%1のセッティング</translation>
    </message>
    <message>
        <source>setup of A</source>
        <translation>Aのセッティング</translation>
    </message>
    <message>
        <source>setup of B</source>
        <translation>Bのセッティング</translation>
    </message>
    <message>
        <source>setups</source>
        <translation>両車のセッティング</translation>
    </message>
    <message>
        <source>shifts</source>
        <translation>シフト数</translation>
    </message>
    <message>
        <source>shifts less often</source>
        <translation>シフト数が少ない</translation>
    </message>
    <message>
        <source>sideways × %1</source>
        <translation>横方向 × %1</translation>
    </message>
    <message>
        <source>slower at the exit by %1</source>
        <translation>脱出で%1遅い</translation>
    </message>
    <message>
        <source>slower at the slowest point by %1</source>
        <translation>ボトムで%1遅い</translation>
    </message>
    <message>
        <source>slower at the top by %1</source>
        <translation>最高速で%1遅い</translation>
    </message>
    <message>
        <source>slower onto it by %1</source>
        <translation>進入で%1遅い</translation>
    </message>
    <message>
        <source>slowest A · B, %1</source>
        <translation>最低 A · B, %1</translation>
    </message>
    <message>
        <source>slowest point</source>
        <translation>ボトム</translation>
    </message>
    <message>
        <source>so it fits the motion</source>
        <translation>これで動きと合います</translation>
    </message>
    <message>
        <source>sound and picture disagree by %1 s: by the sound %2, by the picture %3</source>
        <translation>音声と映像が%1 s食い違っています。音声では%2、映像では%3</translation>
    </message>
    <message>
        <source>sound of %1</source>
        <translation>%1の音声</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>速度</translation>
    </message>
    <message>
        <source>speed and gear</source>
        <translation>速度とギア</translation>
    </message>
    <message>
        <source>speed of the car</source>
        <translation>車の速度</translation>
    </message>
    <message>
        <source>speed, %1</source>
        <translation>速度, %1</translation>
    </message>
    <message>
        <source>split of %1</source>
        <translation>%1の分割</translation>
    </message>
    <message>
        <source>springs</source>
        <translation>スプリング</translation>
    </message>
    <message>
        <source>standard atmosphere at the track&apos;s altitude</source>
        <translation>コースの標高での標準大気</translation>
    </message>
    <message>
        <source>standard atmosphere, altitude unknown</source>
        <translation>標準大気、標高は不明</translation>
    </message>
    <message>
        <source>standstill</source>
        <translation>停止中</translation>
    </message>
    <message>
        <source>start it with the book, or open the session&apos;s file</source>
        <translation>記録帳を指定して起動するか、セッションのファイルを開いてください</translation>
    </message>
    <message>
        <source>start of %1</source>
        <translation>%1の始点</translation>
    </message>
    <message>
        <source>steering angle</source>
        <translation>舵角</translation>
    </message>
    <message>
        <source>straight, %1</source>
        <translation>ストレート、%1</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>確実</translation>
    </message>
    <message>
        <source>suspension front left</source>
        <translation>サスペンション 左前</translation>
    </message>
    <message>
        <source>suspension front right</source>
        <translation>サスペンション 右前</translation>
    </message>
    <message>
        <source>suspension rear left</source>
        <translation>サスペンション 左後</translation>
    </message>
    <message>
        <source>suspension rear right</source>
        <translation>サスペンション 右後</translation>
    </message>
    <message>
        <source>suspension travel does not follow the braking: it cannot be told which way it counts</source>
        <translation>サスペンションのストロークがブレーキングに対応しておらず、向きがわかりません</translation>
    </message>
    <message>
        <source>suspension travel was recorded on too few straights to tell the downforce</source>
        <translation>サスペンションのストロークを記録したストレートが少なく、ダウンフォースがわかりません</translation>
    </message>
    <message>
        <source>suspension travel was recorded: with mass and spring rates in the setup sheet it would tell the downforce</source>
        <translation>サスペンションのストロークが記録されています。セッティングシートに車重とホイールレートがあれば、ダウンフォースがわかります</translation>
    </message>
    <message>
        <source>swap of A and B</source>
        <translation>AとBの入れ替え</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>タブ</translation>
    </message>
    <message>
        <source>take one of those that &quot;lapwright book table --help&quot; names</source>
        <translation>「lapwright book table --help」に出てくるものを指定してください</translation>
    </message>
    <message>
        <source>taken as %1 by its values</source>
        <translation>値から%1と解釈</translation>
    </message>
    <message>
        <source>taken as %1, because it advances evenly</source>
        <translation>一定の間隔で進むため、%1と解釈</translation>
    </message>
    <message>
        <source>taken as minutes of arc</source>
        <translation>角度の分と解釈</translation>
    </message>
    <message>
        <source>taken for %1, which its name does not say for sure</source>
        <translation>%1と解釈、ただし名前だけでは確かではありません</translation>
    </message>
    <message>
        <source>taking back of a prediction</source>
        <translation>予測の取り消し</translation>
    </message>
    <message>
        <source>telling what the change did to the car</source>
        <translation>変更による車の変化を判定中</translation>
    </message>
    <message>
        <source>text</source>
        <translation>文字</translation>
    </message>
    <message>
        <source>the %1 marks %2 laps, but %3 of them do not pass the timing line and %4 pass it more than once: these laps are merged or cut here</source>
        <translation>%1では%2周ですが、そのうち%3周は計測ラインを通らず、%4周は2回以上通ります。これらのラップはここで結合または分割しました</translation>
    </message>
    <message>
        <source>the %1 marks %2 laps, but %3 of them do not pass the timing line: these laps are merged or cut here</source>
        <translation>%1では%2周ですが、そのうち%3周は計測ラインを通りません。これらのラップはここで結合または分割しました</translation>
    </message>
    <message>
        <source>the %1 marks %2 laps, but %3 pass it more than once: these laps are merged or cut here</source>
        <translation>%1では%2周ですが、%3周は計測ラインを2回以上通ります。これらのラップはここで結合または分割しました</translation>
    </message>
    <message>
        <source>the XML declares entities or nests too deeply</source>
        <translation>XMLに実体の宣言があるか、入れ子が深すぎます</translation>
    </message>
    <message>
        <source>the XML is broken here (%1): what comes behind is lost</source>
        <translation>XMLがここで壊れています（%1）。その後ろは失われました</translation>
    </message>
    <message>
        <source>the book answers: %1</source>
        <translation>記録帳の応答: %1</translation>
    </message>
    <message>
        <source>the book cannot be exported onto itself</source>
        <translation>記録帳を自分自身に書き出すことはできません</translation>
    </message>
    <message>
        <source>the book cannot be opened</source>
        <translation>記録帳を開けません</translation>
    </message>
    <message>
        <source>the book cannot be saved: there is no room or no right to write beside it</source>
        <translation>記録帳を救出できません。同じ場所に空きがないか、書き込む権限がありません</translation>
    </message>
    <message>
        <source>the book cannot be written here: nothing was changed</source>
        <translation>ここでは記録帳に書き込めません。何も変わっていません</translation>
    </message>
    <message>
        <source>the book does not know its car and its track: give them names</source>
        <translation>記録帳に車とコースの名前がありません：名前を付けてください</translation>
    </message>
    <message>
        <source>the book does not know the track of every session: there, corners are not held against those of other sessions</source>
        <translation>記録帳でコースのわからないセッションがあり、それらのコーナーはほかのセッションと比べていません</translation>
    </message>
    <message>
        <source>the book has no session of a car &quot;%1&quot;</source>
        <translation>記録帳に車「%1」のセッションはありません</translation>
    </message>
    <message>
        <source>the book is damaged</source>
        <translation>記録帳が破損しています</translation>
    </message>
    <message>
        <source>the book is damaged, and open in another window or program</source>
        <translation>記録帳が破損しており、別のウィンドウかプログラムで開いています</translation>
    </message>
    <message>
        <source>the book was written by a newer version of the program</source>
        <translation>記録帳は新しいバージョンのプログラムで書かれています</translation>
    </message>
    <message>
        <source>the book was written by an older version of the program and cannot be brought up to date here, because it cannot be written</source>
        <translation>記録帳は古いバージョンのプログラムで書かれていますが、書き込めないため、ここでは新しい形に更新できません</translation>
    </message>
    <message>
        <source>the book&apos;s last edits lie in a log beside it, which cannot be read where nothing can be written</source>
        <translation>記録帳の最後の変更は横にあるログに入っていますが、書き込めない場所では読めません</translation>
    </message>
    <message>
        <source>the braking of the car</source>
        <translation>車の減速</translation>
    </message>
    <message>
        <source>the camera&apos;s clock alone: a rough start</source>
        <translation>カメラの時計だけによる大まかな初期値</translation>
    </message>
    <message>
        <source>the car is not known well enough to be simulated</source>
        <translation>シミュレーションできるほど車の特性がわかっていません</translation>
    </message>
    <message>
        <source>the change cannot be told from a drift of tyres or track</source>
        <translation>変更の効果を、タイヤや路面の変化と区別できません</translation>
    </message>
    <message>
        <source>the clock is coarser than the rows: rows of one stamp were spread evenly</source>
        <translation>時刻の刻みが行の間隔より粗いため、同じ時刻の行を均等に割り振りました</translation>
    </message>
    <message>
        <source>the clock is set by an hour here, as summer time begins or ends: the time goes on</source>
        <translation>ここで夏時間の開始か終了により時計が1時間変わります。時間は続きとして扱いました</translation>
    </message>
    <message>
        <source>the clock jumps %1 time: the recording is split there, nothing is joined across</source>
        <translation>時計が%1回飛びます。走行データはそこで分かれ、つないでいません</translation>
    </message>
    <message>
        <source>the clock jumps %1 times: the recording is split there, nothing is joined across</source>
        <translation>時計が%1回飛びます。走行データはそこで分かれ、つないでいません</translation>
    </message>
    <message>
        <source>the clock passes midnight here: the time goes on</source>
        <translation>ここで時計が午前0時を過ぎます。時間は続きとして扱いました</translation>
    </message>
    <message>
        <source>the clocks of camera and logger say another offset: one of them was not set</source>
        <translation>カメラとロガーの時計からは別のずれになります。どちらかの時計が合っていません</translation>
    </message>
    <message>
        <source>the corner that decides</source>
        <translation>差が最も大きいコーナー</translation>
    </message>
    <message>
        <source>the disk did not read or write: nothing was changed in the book</source>
        <translation>ディスクの読み書きができませんでした。記録帳は何も変わっていません</translation>
    </message>
    <message>
        <source>the disk is full or cannot be written: nothing was changed in the book</source>
        <translation>ディスクがいっぱいか書き込めません。記録帳は何も変わっていません</translation>
    </message>
    <message>
        <source>the distant picture turns as the car does</source>
        <translation>遠景の動きが車の旋回と一致</translation>
    </message>
    <message>
        <source>the distant picture turns as the car does at the same offset</source>
        <translation>同じずれで、遠景の動きも車の旋回と一致します</translation>
    </message>
    <message>
        <source>the downforce area given</source>
        <translation>入力されたダウンフォース面積</translation>
    </message>
    <message>
        <source>the drag area given</source>
        <translation>入力された空気抵抗面積</translation>
    </message>
    <message>
        <source>the engine in the sound follows the recorded engine speed</source>
        <translation>エンジン音が記録されたエンジン回転数と一致</translation>
    </message>
    <message>
        <source>the engine in the sound follows the speed within each gear</source>
        <translation>エンジン音が各ギアでの速度と一致</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>ファイルを読めません</translation>
    </message>
    <message>
        <source>the file cannot be read to its end</source>
        <translation>ファイルを最後まで読めません</translation>
    </message>
    <message>
        <source>the file cannot be written</source>
        <translation>ファイルに書き込めません</translation>
    </message>
    <message>
        <source>the file holds more fixes than can be held</source>
        <translation>ファイルの測位が多すぎて扱えません</translation>
    </message>
    <message>
        <source>the file holds more points than can be held</source>
        <translation>ファイルの点が多すぎて扱えません</translation>
    </message>
    <message>
        <source>the file holds no speed: it was derived from the positions, and is no finer than they are</source>
        <translation>ファイルに速度がないため位置から算出しました。精度は位置と同じ程度です</translation>
    </message>
    <message>
        <source>the file is larger than 4 GiB</source>
        <translation>ファイルが4 GiBを超えています</translation>
    </message>
    <message>
        <source>the file lists one reading a row: those of one time were put side by side, and lines are counted so</source>
        <translation>1行に値が1つのファイルです。同じ時刻の値を横に並べ、行番号もそのように数えています</translation>
    </message>
    <message>
        <source>the fit of grip and downforce over the sessions has not settled</source>
        <translation>全セッションでのグリップとダウンフォースの当てはめが収束していません</translation>
    </message>
    <message>
        <source>the fit of the corners has not settled</source>
        <translation>コーナーの当てはめが収束していません</translation>
    </message>
    <message>
        <source>the fit of the corners of %1 has not settled</source>
        <translation>%1のコーナーの当てはめが収束していません</translation>
    </message>
    <message>
        <source>the fit of the straights has not settled</source>
        <translation>ストレートの当てはめが収束していません</translation>
    </message>
    <message>
        <source>the gate needs &quot;latitude_deg&quot;, &quot;longitude_deg&quot; and &quot;heading_deg&quot; as numbers</source>
        <translation>gateには数値の「latitude_deg」「longitude_deg」「heading_deg」が必要です</translation>
    </message>
    <message>
        <source>the header stands again %1 time%2</source>
        <translation>見出し行がもう%1回出てきます%2</translation>
    </message>
    <message>
        <source>the header stands again %1 times%2</source>
        <translation>見出し行がさらに%1回出てきます%2</translation>
    </message>
    <message>
        <source>the lap begins and ends at the timing line</source>
        <translation>ラップは計測ラインで始まり、計測ラインで終わります</translation>
    </message>
    <message>
        <source>the laps allow more than a car can have</source>
        <translation>ラップからは、車としてありえない値まで否定できません</translation>
    </message>
    <message>
        <source>the laps do not tell the %1 of %2</source>
        <translation>ラップからは%2の%1がわかりません</translation>
    </message>
    <message>
        <source>the laps do not tell the downforce; it is mostly what such cars usually have</source>
        <translation>ラップからはダウンフォースがわかりません。値はほぼ、同じような車の普通の値です</translation>
    </message>
    <message>
        <source>the laps do not tell the drag; it is mostly what such cars usually have</source>
        <translation>ラップからは空気抵抗がわかりません。値はほぼ、同じような車の普通の値です</translation>
    </message>
    <message>
        <source>the letter O can be east (German, Dutch) or west (French, Spanish, Italian): taken as east</source>
        <translation>文字Oは東（ドイツ語、オランダ語）とも西（フランス語、スペイン語、イタリア語）とも読めるため、東と解釈</translation>
    </message>
    <message>
        <source>the memory does not suffice for this file</source>
        <translation>このファイルにはメモリーが足りません</translation>
    </message>
    <message>
        <source>the name is empty</source>
        <translation>名前が空です</translation>
    </message>
    <message>
        <source>the name is longer than %1 characters</source>
        <translation>名前が%1文字を超えています</translation>
    </message>
    <message>
        <source>the new name is empty</source>
        <translation>新しい名前が空です</translation>
    </message>
    <message>
        <source>the newest row stands first: the table is read from its end</source>
        <translation>新しい行が先頭にあるため、表を末尾から読みました</translation>
    </message>
    <message>
        <source>the noise of the sensors did not settle, the greater one is taken: %1</source>
        <translation>センサーのノイズの推定が収束せず、大きいほうを使いました: %1</translation>
    </message>
    <message>
        <source>the number of the lap goes down %1 time</source>
        <translation>ラップ番号が%1回減っています</translation>
    </message>
    <message>
        <source>the number of the lap goes down %1 times</source>
        <translation>ラップ番号が%1回減っています</translation>
    </message>
    <message>
        <source>the offset is being looked for</source>
        <translation>ずれを探しています</translation>
    </message>
    <message>
        <source>the picture does not turn as the car does at any offset</source>
        <translation>どのずれでも映像の動きが車の旋回と一致しません</translation>
    </message>
    <message>
        <source>the picture of the video is shorter than 40 seconds</source>
        <translation>動画の映像が40秒より短いです</translation>
    </message>
    <message>
        <source>the positions</source>
        <translation>位置</translation>
    </message>
    <message>
        <source>the positions stand in rows of %1 Hz but change at about %2 Hz: repeated values are no measurements</source>
        <translation>位置は%1 Hzの行に書かれていますが、変わるのは約%2 Hzです。繰り返しの値は測定値として扱いません</translation>
    </message>
    <message>
        <source>the power given</source>
        <translation>入力されたパワー</translation>
    </message>
    <message>
        <source>the prediction is not in the book (any more)</source>
        <translation>その予測は記録帳にありません（またはもうありません）</translation>
    </message>
    <message>
        <source>the recipe</source>
        <translation>レシピ</translation>
    </message>
    <message>
        <source>the recipe &quot;%1&quot;</source>
        <translation>レシピ「%1」</translation>
    </message>
    <message>
        <source>the recipe cannot be opened</source>
        <translation>レシピを開けません</translation>
    </message>
    <message>
        <source>the recipe cannot be read</source>
        <translation>レシピを読めません</translation>
    </message>
    <message>
        <source>the recipe cannot be removed</source>
        <translation>レシピを削除できません</translation>
    </message>
    <message>
        <source>the recorded speed does not follow the positions: it was not used</source>
        <translation>記録された速度が位置と合わないため使っていません</translation>
    </message>
    <message>
        <source>the recorded speed reads %1 % too high against the positions, as a wheel&apos;s does: its scale was estimated</source>
        <translation>記録された速度が車輪速のように位置に対して%1 %高く出ているため、その倍率を推定しました</translation>
    </message>
    <message>
        <source>the recorded speed reads %1 % too high against the positions: it was not used</source>
        <translation>記録された速度が位置に対して%1 %高すぎるため使っていません</translation>
    </message>
    <message>
        <source>the recorded speed reads %1 % too low against the positions, as a wheel&apos;s does: its scale was estimated</source>
        <translation>記録された速度が車輪速のように位置に対して%1 %低く出ているため、その倍率を推定しました</translation>
    </message>
    <message>
        <source>the recorded speed reads %1 % too low against the positions: it was not used</source>
        <translation>記録された速度が位置に対して%1 %低すぎるため使っていません</translation>
    </message>
    <message>
        <source>the recording does not say when it was made</source>
        <translation>走行データに記録日時がありません</translation>
    </message>
    <message>
        <source>the recording has a hole in it</source>
        <translation>走行データに欠落がある</translation>
    </message>
    <message>
        <source>the recording is too short</source>
        <translation>走行データが短すぎます</translation>
    </message>
    <message>
        <source>the recording pauses %1 time for more than a minute: nothing is joined across</source>
        <translation>走行データに1分を超える中断が%1回あります。その前後はつないでいません</translation>
    </message>
    <message>
        <source>the recording pauses %1 times for more than a minute: nothing is joined across</source>
        <translation>走行データに1分を超える中断が%1回あります。その前後はつないでいません</translation>
    </message>
    <message>
        <source>the session has no positions that follow each other</source>
        <translation>セッションに連続した位置がありません</translation>
    </message>
    <message>
        <source>the sessions are taken in the order of their start times, not as given</source>
        <translation>セッションは、与えられた順ではなく開始時刻の順に並べます</translation>
    </message>
    <message>
        <source>the sessions do not tell what it does to this</source>
        <translation>セッションからはこれへの影響がわかりません</translation>
    </message>
    <message>
        <source>the sessions named were not driven by this driver with this car on this track after the prediction was kept, or have no date</source>
        <translation>指定したセッションは、予測の保存後にこのドライバーがこの車でこのコースを走ったものではないか、日付がありません</translation>
    </message>
    <message>
        <source>the sessions were driven at different tracks</source>
        <translation>セッションのコースが違います</translation>
    </message>
    <message>
        <source>the setup sheet cannot be opened</source>
        <translation>セッティングシートを開けません</translation>
    </message>
    <message>
        <source>the setup sheet is not a JSON object</source>
        <translation>セッティングシートがJSONオブジェクトではありません</translation>
    </message>
    <message>
        <source>the setup sheet says &quot;%1&quot; already</source>
        <translation>セッティングシートはすでに「%1」です</translation>
    </message>
    <message>
        <source>the setup sheets of the baseline differ: %1</source>
        <translation>基準のセッティングシートどうしが違っています: %1</translation>
    </message>
    <message>
        <source>the setup sheets show no change from %1 to %2</source>
        <translation>セッティングシートでは%1から%2で変更がありません</translation>
    </message>
    <message>
        <source>the sheet</source>
        <translation>シート</translation>
    </message>
    <message>
        <source>the simulated car of %1 is %2 s too quick here, whatever the driver does</source>
        <translation>ドライバーがどう走っても、シミュレーションの%1の車はここで%2 s速すぎます</translation>
    </message>
    <message>
        <source>the simulated car of %1 is %2 s too slow here, whatever the driver does</source>
        <translation>ドライバーがどう走っても、シミュレーションの%1の車はここで%2 s遅すぎます</translation>
    </message>
    <message>
        <source>the simulated cars miss the measured times by %1 s a lap</source>
        <translation>シミュレーションの車のタイムが実測から1周%1 sずれています</translation>
    </message>
    <message>
        <source>the simulation of some draws came to nothing</source>
        <translation>一部の試行でシミュレーションができませんでした</translation>
    </message>
    <message>
        <source>the sound of the video is shorter than 40 seconds</source>
        <translation>動画の音声が40秒より短いです</translation>
    </message>
    <message>
        <source>the spring rates do not fit what braking does to the suspension: check their units</source>
        <translation>ホイールレートがブレーキング時のサスペンションの動きと合いません。単位を確認してください</translation>
    </message>
    <message>
        <source>the suspension&apos;s downforce area</source>
        <translation>サスペンションから求めたダウンフォース面積</translation>
    </message>
    <message>
        <source>the table has more than 4096 columns</source>
        <translation>表の列が4096を超えています</translation>
    </message>
    <message>
        <source>the table has more values than can be held</source>
        <translation>表の値が多すぎて扱えません</translation>
    </message>
    <message>
        <source>the time starts again with each lap: the laps are put end to end, each %1 s after the last row of the one before</source>
        <translation>時刻がラップごとに最初から始まるため、ラップをつなげました。各ラップは前のラップの最終行の%1 s後に始まります</translation>
    </message>
    <message>
        <source>the timing line is never crossed</source>
        <translation>計測ラインを一度も通過していません</translation>
    </message>
    <message>
        <source>the timing line lies there already</source>
        <translation>計測ラインは既にそこにあります</translation>
    </message>
    <message>
        <source>the track file cannot be opened</source>
        <translation>コースファイルを開けません</translation>
    </message>
    <message>
        <source>the track file has no &quot;gate&quot;</source>
        <translation>コースファイルに「gate」がありません</translation>
    </message>
    <message>
        <source>the track file is not a JSON object</source>
        <translation>コースファイルがJSONオブジェクトではありません</translation>
    </message>
    <message>
        <source>the track file tells its timing line by latitude and longitude, the recording&apos;s positions are metres of its own</source>
        <translation>コースファイルの計測ラインは緯度・経度ですが、走行データの位置は独自のメートル座標です</translation>
    </message>
    <message>
        <source>the track has no corner of the name %1</source>
        <translation>コースに「%1」という名前のコーナーはありません</translation>
    </message>
    <message>
        <source>the track has no corner to show stills of</source>
        <translation>静止画にするコーナーがコースにありません</translation>
    </message>
    <message>
        <source>the track has no name</source>
        <translation>コースに名前がありません</translation>
    </message>
    <message>
        <source>the track&apos;s name is too long</source>
        <translation>コース名が長すぎます</translation>
    </message>
    <message>
        <source>the track&apos;s record</source>
        <translation>コースの登録内容</translation>
    </message>
    <message>
        <source>the unit %1 is not known, taken as %2</source>
        <translation>単位%1は未知のため、%2と解釈</translation>
    </message>
    <message>
        <source>the unit %1 is not known, values are kept as written</source>
        <translation>単位%1は未知のため、値は書かれたまま残しました</translation>
    </message>
    <message>
        <source>the video begins %1 before the recording&apos;s start</source>
        <translation>動画の始まりは走行データの始まりの%1前</translation>
    </message>
    <message>
        <source>the video begins %1 behind the recording&apos;s start</source>
        <translation>動画の始まりは走行データの始まりの%1後</translation>
    </message>
    <message>
        <source>the video cannot be decoded</source>
        <translation>動画をデコードできません</translation>
    </message>
    <message>
        <source>the video cannot be read</source>
        <translation>動画を読めません</translation>
    </message>
    <message>
        <source>the video cannot be wound back</source>
        <translation>動画を巻き戻せません</translation>
    </message>
    <message>
        <source>the video does not say how long it is, so that nothing can be joined to it</source>
        <translation>動画に長さの情報がないため、つなげられません</translation>
    </message>
    <message>
        <source>the video does not say when it was taken</source>
        <translation>動画に撮影日時がありません</translation>
    </message>
    <message>
        <source>the video has no sound</source>
        <translation>動画に音声がありません</translation>
    </message>
    <message>
        <source>the video holds no frame that can be decoded</source>
        <translation>動画にデコードできるコマがありません</translation>
    </message>
    <message>
        <source>the video holds none</source>
        <translation>動画に音声が入っていません</translation>
    </message>
    <message>
        <source>the video is empty</source>
        <translation>動画が空です</translation>
    </message>
    <message>
        <source>the video is no longer there, nor beside the recording</source>
        <translation>動画が元の場所にも、走行データの横にもありません</translation>
    </message>
    <message>
        <source>the video is not there</source>
        <translation>動画がありません</translation>
    </message>
    <message>
        <source>the video may not be read</source>
        <translation>動画を読む権限がありません</translation>
    </message>
    <message>
        <source>the video was cut off before its index was written</source>
        <translation>索引が書かれる前に動画が途切れています</translation>
    </message>
    <message>
        <source>the video was taken at another time of the day</source>
        <translation>動画は別の時間帯に撮影されています</translation>
    </message>
    <message>
        <source>the video was taken on another day</source>
        <translation>動画は別の日に撮影されています</translation>
    </message>
    <message>
        <source>the work was cancelled</source>
        <translation>処理を中止しました</translation>
    </message>
    <message>
        <source>there is a segment &quot;%1&quot; already</source>
        <translation>区間「%1」は既にあります</translation>
    </message>
    <message>
        <source>there is no clean lap</source>
        <translation>クリアラップがありません</translation>
    </message>
    <message>
        <source>there is no clean lap to learn the car from</source>
        <translation>車の特性を知るためのクリアラップがありません</translation>
    </message>
    <message>
        <source>there is no flying lap in it</source>
        <translation>計測ラップがありません</translation>
    </message>
    <message>
        <source>there is no flying lap in it that follows the track</source>
        <translation>コースをたどる計測ラップがありません</translation>
    </message>
    <message>
        <source>there is no flying lap with the number %1</source>
        <translation>%1周目という計測ラップはありません</translation>
    </message>
    <message>
        <source>there is no picture in this file</source>
        <translation>このファイルには映像がありません</translation>
    </message>
    <message>
        <source>there is no such book</source>
        <translation>その記録帳はありません</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>そのファイルはありません</translation>
    </message>
    <message>
        <source>there is no such segment</source>
        <translation>その区間はありません</translation>
    </message>
    <message>
        <source>there is no whole lap in it</source>
        <translation>完全な1周がありません</translation>
    </message>
    <message>
        <source>there is not enough memory for the video</source>
        <translation>動画のためのメモリーが足りません</translation>
    </message>
    <message>
        <source>these are two cars, &quot;%1&quot; and &quot;%2&quot;</source>
        <translation>車が2台あります。「%1」と「%2」</translation>
    </message>
    <message>
        <source>these are two drivers, &quot;%1&quot; and &quot;%2&quot;</source>
        <translation>ドライバーが2人います。「%1」と「%2」</translation>
    </message>
    <message>
        <source>these are two tracks, &quot;%1&quot; and &quot;%2&quot;</source>
        <translation>コースが2つあります。「%1」と「%2」</translation>
    </message>
    <message>
        <source>this belongs to something that is not in the book (any more)</source>
        <translation>これが属するものは記録帳に（もう）ありません</translation>
    </message>
    <message>
        <source>this comparison</source>
        <translation>この比較</translation>
    </message>
    <message>
        <source>this file has no columns to choose</source>
        <translation>このファイルには選べる列がありません</translation>
    </message>
    <message>
        <source>this file is no book</source>
        <translation>このファイルは記録帳ではありません</translation>
    </message>
    <message>
        <source>this installation has no video decoder</source>
        <translation>この環境には動画デコーダーがありません</translation>
    </message>
    <message>
        <source>this is a folder or a device</source>
        <translation>フォルダーか機器です</translation>
    </message>
    <message>
        <source>this is no JSON document</source>
        <translation>JSON文書ではありません</translation>
    </message>
    <message>
        <source>this is no file</source>
        <translation>ファイルではありません</translation>
    </message>
    <message>
        <source>this is no file of data</source>
        <translation>データのファイルではありません</translation>
    </message>
    <message>
        <source>this is no import recipe of version 1</source>
        <translation>バージョン1の読み込みレシピではありません</translation>
    </message>
    <message>
        <source>this is no video of a kind that can be read</source>
        <translation>読める種類の動画ではありません</translation>
    </message>
    <message>
        <source>this is not valid JSON</source>
        <translation>正しいJSONではありません</translation>
    </message>
    <message>
        <source>this is the book itself</source>
        <translation>これは記録帳そのものです</translation>
    </message>
    <message>
        <source>this is too large to be a recipe</source>
        <translation>レシピにしては大きすぎます</translation>
    </message>
    <message>
        <source>this is too long for a setup sheet</source>
        <translation>セッティングシートにしては長すぎます</translation>
    </message>
    <message>
        <source>this is too long for a track file</source>
        <translation>コースファイルにしては長すぎます</translation>
    </message>
    <message>
        <source>this machine has no device for it</source>
        <translation>この機器に音声の出力先がありません</translation>
    </message>
    <message>
        <source>this pairing is not in the book (any more)</source>
        <translation>このペアは記録帳に（もう）ありません</translation>
    </message>
    <message>
        <source>this prediction is kept already, and what was said first counts</source>
        <translation>この予測はすでに保存されています。最初に言ったことが有効です</translation>
    </message>
    <message>
        <source>this session is in the book, and the window has none</source>
        <translation>このセッションは記録帳にありますが、ウィンドウに記録帳がありません</translation>
    </message>
    <message>
        <source>this session is not in the book</source>
        <translation>このセッションは記録帳にありません</translation>
    </message>
    <message>
        <source>this session is not in the book (any more)</source>
        <translation>このセッションは記録帳に（もう）ありません</translation>
    </message>
    <message>
        <source>this session never drives the lap of %1</source>
        <translation>このセッションは%1のラップと同じところを走っていません</translation>
    </message>
    <message>
        <source>this track has no place on the earth: the files have no positions in latitude and longitude</source>
        <translation>このコースは地図上の位置がありません。ファイルに緯度・経度の位置がないためです</translation>
    </message>
    <message>
        <source>three laps, three with one step of the wing, three as before, held together as a trial</source>
        <translation>3周、ウイングを1段変えて3周、元に戻して3周を走り、セット変更テストとしてまとめる</translation>
    </message>
    <message>
        <source>throttle</source>
        <translation>アクセル</translation>
    </message>
    <message>
        <source>throttle opens, %1 after slowest</source>
        <translation>アクセルオン, ボトムから%1</translation>
    </message>
    <message>
        <source>time</source>
        <translation>時間</translation>
    </message>
    <message>
        <source>time won</source>
        <translation>稼いだタイム</translation>
    </message>
    <message>
        <source>times are written without a time zone: taken as UTC</source>
        <translation>時刻にタイムゾーンがないため、UTCと解釈</translation>
    </message>
    <message>
        <source>timing line</source>
        <translation>計測ライン</translation>
    </message>
    <message>
        <source>timing line: %1</source>
        <translation>計測ライン: %1</translation>
    </message>
    <message>
        <source>timing the laps</source>
        <translation>ラップを計時中</translation>
    </message>
    <message>
        <source>too few corners are driven at the limit with and without the change</source>
        <translation>変更ありとなしで、限界で走ったコーナーが少なすぎます</translation>
    </message>
    <message>
        <source>too few straights are driven at full throttle with and without the change</source>
        <translation>変更ありとなしで、全開で走ったストレートが少なすぎます</translation>
    </message>
    <message>
        <source>too long to be a lap</source>
        <translation>ラップとしては長すぎる</translation>
    </message>
    <message>
        <source>too short to be a lap</source>
        <translation>ラップとしては短すぎる</translation>
    </message>
    <message>
        <source>too slow to be a lap</source>
        <translation>ラップとしては遅すぎる</translation>
    </message>
    <message>
        <source>top %1</source>
        <translation>最高 %1</translation>
    </message>
    <message>
        <source>track</source>
        <translation>コース</translation>
    </message>
    <message>
        <source>track?</source>
        <translation>コース?</translation>
    </message>
    <message>
        <source>traffic, a mistake, a flag; Return without a word does too</source>
        <translation>他車、ミス、フラッグなど。空欄のままEnterでも可</translation>
    </message>
    <message>
        <source>turn-in</source>
        <translation>ターンイン</translation>
    </message>
    <message>
        <source>tyre</source>
        <translation>タイヤ</translation>
    </message>
    <message>
        <source>tyre grip</source>
        <translation>タイヤグリップ</translation>
    </message>
    <message>
        <source>tyre grip and downforce</source>
        <translation>タイヤグリップとダウンフォース</translation>
    </message>
    <message>
        <source>tyres used</source>
        <translation>タイヤ使用率</translation>
    </message>
    <message>
        <source>tyres used in corners</source>
        <translation>コーナーのタイヤ使用率</translation>
    </message>
    <message>
        <source>uncertainty of the mass</source>
        <translation>車重の不確かさ</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>%1未満</translation>
    </message>
    <message>
        <source>unit %1 as its cells write</source>
        <translation>単位はセルの記載どおり%1</translation>
    </message>
    <message>
        <source>unit %1 as written</source>
        <translation>単位は記載どおり%1</translation>
    </message>
    <message>
        <source>units that are not written were told from the values: %1</source>
        <translation>書かれていない単位は値から判断しました: %1</translation>
    </message>
    <message>
        <source>until 2026-05-16</source>
        <translation>2026-05-16まで</translation>
    </message>
    <message>
        <source>vertical acceleration</source>
        <translation>上下G</translation>
    </message>
    <message>
        <source>weigh the car with driver and fuel as driven, and enter the mass, good to 3 kg</source>
        <translation>走行時と同じドライバーと燃料で車重を量り、3 kg以内の精度で入力</translation>
    </message>
    <message>
        <source>what %1 does to it cannot be told</source>
        <translation>%1の影響は判定不可</translation>
    </message>
    <message>
        <source>what %1 is worth cannot be told: %2</source>
        <translation>%1の効果は判定不可: %2</translation>
    </message>
    <message>
        <source>what driver and rest are worth cannot be told: %1</source>
        <translation>ドライバー他の効果は判定不可: %1</translation>
    </message>
    <message>
        <source>what if</source>
        <translation>試算</translation>
    </message>
    <message>
        <source>what the change does to the lap was not told</source>
        <translation>変更がラップに与える効果は示されていません</translation>
    </message>
    <message>
        <source>what the change is worth on this track, to %1 s a lap</source>
        <translation>このコースでの変更の効果が1周%1 sの精度でわかる</translation>
    </message>
    <message>
        <source>wheel</source>
        <translation>ホイール</translation>
    </message>
    <message>
        <source>wheel speed</source>
        <translation>車輪速</translation>
    </message>
    <message>
        <source>wheel speed reads %1 % high against the speed over the ground</source>
        <translation>車輪速が対地速度より%1 %高く出ています</translation>
    </message>
    <message>
        <source>wheel speed reads %1 % low against the speed over the ground</source>
        <translation>車輪速が対地速度より%1 %低く出ています</translation>
    </message>
    <message>
        <source>where on the track the corners of %1 lap lie did not settle: placed by distance alone, less surely</source>
        <translation>%1周分のコーナーの位置合わせが収束せず、距離だけで配置しました。精度は下がります</translation>
    </message>
    <message>
        <source>where on the track the corners of %1 laps lie did not settle: placed by distance alone, less surely</source>
        <translation>%1周分のコーナーの位置合わせが収束せず、距離だけで配置しました。精度は下がります</translation>
    </message>
    <message>
        <source>whole lap</source>
        <translation>ラップ全体</translation>
    </message>
    <message>
        <source>whole parts of a degree by their size</source>
        <translation>大きさから見て、度の整数分割</translation>
    </message>
    <message>
        <source>whole ten-millionths of a degree by their size</source>
        <translation>大きさから見て、1000万分の1度の整数</translation>
    </message>
    <message>
        <source>with the change</source>
        <translation>変更あり</translation>
    </message>
    <message>
        <source>without positions laps come from a lap column or a beacon, and it shows no whole lap</source>
        <translation>位置がない場合、ラップはラップ列かビーコンから求めますが、そこに完全な1周がありません</translation>
    </message>
    <message>
        <source>without positions there is too little speed to follow the car by</source>
        <translation>位置がなく、車の動きをたどるには速度の記録が足りません</translation>
    </message>
    <message>
        <source>without the mass of both cars power, drag and downforce count per kilogram, and mass is part of them</source>
        <translation>両車の車重がわからないため、パワー、空気抵抗、ダウンフォースは1 kgあたりで扱い、車重の分もその中に含まれます</translation>
    </message>
    <message>
        <source>without the mass what the setup sheet knows of downforce, drag and power does not count</source>
        <translation>車重がないため、セッティングシートにあるダウンフォース、空気抵抗、パワーは使えません</translation>
    </message>
    <message>
        <source>won by, s</source>
        <translation>速い側, s</translation>
    </message>
    <message>
        <source>write a note here by the Edit menu</source>
        <translation>「編集」メニューでここにメモを書く</translation>
    </message>
    <message>
        <source>write it as &quot;wing angle=7 deg&quot;</source>
        <translation>「wing angle=7 deg」のように書いてください</translation>
    </message>
    <message>
        <source>write it as 2026-05-16</source>
        <translation>2026-05-16のように書いてください</translation>
    </message>
    <message>
        <source>write it as 2026-05-16 10:20</source>
        <translation>2026-05-16 10:20のように書いてください</translation>
    </message>
    <message>
        <source>write it as 2026-05-16 10:20, with 0 to 23 hours</source>
        <translation>2026-05-16 10:20のように、時は0から23で書いてください</translation>
    </message>
    <message>
        <source>write the recipe again from the column dialog</source>
        <translation>列のダイアログからレシピを書き直してください</translation>
    </message>
    <message>
        <source>written like the %1</source>
        <translation>%1と同じ書き方</translation>
    </message>
    <message>
        <source>yaw rate</source>
        <translation>ヨーレート</translation>
    </message>
    <message>
        <source>± is half of the 95 % interval. “prior”: the data could not tell, a stated assumption did; “setup”: from the setup sheet; all else the data decided.</source>
        <translation>±は95 % 範囲の半分です。「前提」: データではわからず、明示した前提で決めた値。「セッティング」: セッティングシートの値。ほかはすべてデータで決まった値です。</translation>
    </message>
    <message>
        <source>≈ taken from the motion, because the pedal was not recorded</source>
        <translation>≈ ペダルの記録がないため、車の動きから算出</translation>
    </message>
</context>
</TS>
