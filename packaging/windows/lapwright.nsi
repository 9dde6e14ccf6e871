; SPDX-License-Identifier: GPL-3.0-or-later
; The installer, made by packaging/windows/build with Debian's makensis: for the person who runs it, without an administrator and
; without a network. VERSION, STAGE (the folder to install), LISTS (what to put there and to take away again), OUTPUT, SIZE_KB
; and, where there is one, WINDOW are given. Removing takes away what was put there and nothing else: book and settings stay.
Target amd64-unicode
Unicode true
ManifestDPIAware true
SetCompressor /SOLID lzma
!include MUI2.nsh

Name "Lapwright"
OutFile "${OUTPUT}"
BrandingText "Lapwright ${VERSION}"
RequestExecutionLevel user
!define UNINSTALL "Software\Microsoft\Windows\CurrentVersion\Uninstall\Lapwright"
!define KIND "Lapwright.Recording"
InstallDir "$LOCALAPPDATA\Programs\Lapwright"
InstallDirRegKey HKCU "${UNINSTALL}" "InstallLocation"

VIProductVersion "${VERSION}.0"
VIAddVersionKey ProductName "Lapwright"
VIAddVersionKey ProductVersion "${VERSION}"
VIAddVersionKey FileVersion "${VERSION}"
VIAddVersionKey FileDescription "Installs Lapwright"
VIAddVersionKey LegalCopyright "The Lapwright authors, GPL-3.0-or-later"

!define MUI_ICON "${LISTS}\lapwright.ico"
!define MUI_UNICON "${LISTS}\lapwright.ico"
!define MUI_LICENSEPAGE_BUTTON "Next >"
!define MUI_LICENSEPAGE_TEXT_BOTTOM "Whoever uses the program need not accept the licence; it says what you may do with it. Press Next to continue."
!insertmacro MUI_PAGE_LICENSE "${STAGE}\share\doc\lapwright\LICENSE.txt"
!insertmacro MUI_PAGE_COMPONENTS
!insertmacro MUI_PAGE_DIRECTORY
!insertmacro MUI_PAGE_INSTFILES
!ifdef WINDOW
!define MUI_FINISHPAGE_RUN "$INSTDIR\bin\lapwright-window.exe"
!endif
!insertmacro MUI_PAGE_FINISH
!insertmacro MUI_UNPAGE_CONFIRM
!insertmacro MUI_UNPAGE_INSTFILES
!insertmacro MUI_LANGUAGE "English"

!macro offer_for ending
    WriteRegStr HKCU "Software\Classes\${ending}\OpenWithProgids" "${KIND}" ""
!macroend
!macro no_longer_offer_for ending
    DeleteRegValue HKCU "Software\Classes\${ending}\OpenWithProgids" "${KIND}"
    DeleteRegKey /ifempty HKCU "Software\Classes\${ending}\OpenWithProgids"
    DeleteRegKey /ifempty HKCU "Software\Classes\${ending}"
!macroend
!macro tell_the_desktop
    System::Call 'shell32::SHChangeNotify(i 0x08000000, i 0, p 0, p 0)'
!macroend

Section "Lapwright" program
    SectionIn RO
    !include "${LISTS}\put.nsh"
    WriteUninstaller "$INSTDIR\uninstall.exe"
    WriteRegStr HKCU "${UNINSTALL}" "DisplayName" "Lapwright"
    WriteRegStr HKCU "${UNINSTALL}" "DisplayVersion" "${VERSION}"
    WriteRegStr HKCU "${UNINSTALL}" "DisplayIcon" "$INSTDIR\bin\lapwright.exe"
    WriteRegStr HKCU "${UNINSTALL}" "Publisher" "The Lapwright authors"
    WriteRegStr HKCU "${UNINSTALL}" "InstallLocation" "$INSTDIR"
    WriteRegStr HKCU "${UNINSTALL}" "UninstallString" '"$INSTDIR\uninstall.exe"'
    WriteRegStr HKCU "${UNINSTALL}" "QuietUninstallString" '"$INSTDIR\uninstall.exe" /S'
    WriteRegDWORD HKCU "${UNINSTALL}" "EstimatedSize" ${SIZE_KB}
    WriteRegDWORD HKCU "${UNINSTALL}" "NoModify" 1
    WriteRegDWORD HKCU "${UNINSTALL}" "NoRepair" 1
SectionEnd

Section "Start menu" menu
    SetOutPath "$INSTDIR\share\lapwright\sample-sessions"
    CreateDirectory "$SMPROGRAMS\Lapwright"
!ifdef WINDOW
    CreateShortcut "$SMPROGRAMS\Lapwright\Lapwright.lnk" "$INSTDIR\bin\lapwright-window.exe"
!endif
    CreateShortcut "$SMPROGRAMS\Lapwright\Command line.lnk" "$SYSDIR\cmd.exe" '/K "set PATH=$INSTDIR\bin;%PATH%"' \
        "$INSTDIR\bin\lapwright.exe"
SectionEnd

!ifdef WINDOW
Section "Offer Lapwright in $\"Open with$\"" endings
    WriteRegStr HKCU "Software\Classes\${KIND}" "" "Recording of a logger"
    WriteRegStr HKCU "Software\Classes\${KIND}\DefaultIcon" "" "$INSTDIR\bin\lapwright-window.exe,0"
    WriteRegStr HKCU "Software\Classes\${KIND}\shell\open\command" "" '"$INSTDIR\bin\lapwright-window.exe" "%1"'
    !insertmacro offer_for ".csv"
    !insertmacro offer_for ".tsv"
    !insertmacro offer_for ".gpx"
    !insertmacro offer_for ".nmea"
    !insertmacro tell_the_desktop
SectionEnd
!endif

!insertmacro MUI_FUNCTION_DESCRIPTION_BEGIN
    !insertmacro MUI_DESCRIPTION_TEXT ${program} "The program, its sample sessions and its documents."
    !insertmacro MUI_DESCRIPTION_TEXT ${menu} "Lapwright in the start menu."
!ifdef WINDOW
    !insertmacro MUI_DESCRIPTION_TEXT ${endings} "A right click on a CSV, TSV, GPX or NMEA file has Lapwright among the programs \
that open it. What opens such a file by a double click stays as it is."
!endif
!insertmacro MUI_FUNCTION_DESCRIPTION_END

Section "Uninstall"
    !include "${LISTS}\take.nsh"
    Delete "$INSTDIR\uninstall.exe"
    RMDir "$INSTDIR"
    Delete "$SMPROGRAMS\Lapwright\Lapwright.lnk"
    Delete "$SMPROGRAMS\Lapwright\Command line.lnk"
    RMDir "$SMPROGRAMS\Lapwright"
    DeleteRegKey HKCU "${UNINSTALL}"
    DeleteRegKey HKCU "Software\Classes\${KIND}"
    !insertmacro no_longer_offer_for ".csv"
    !insertmacro no_longer_offer_for ".tsv"
    !insertmacro no_longer_offer_for ".gpx"
    !insertmacro no_longer_offer_for ".nmea"
    !insertmacro tell_the_desktop
SectionEnd
