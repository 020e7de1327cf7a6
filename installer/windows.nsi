; The Windows installer: copies the frozen folder, makes the Start menu entry, can be removed again.
; installer/build.py compiles it and says where PROGRAM lies and what TARGET is called.
; It goes into the user's own folder and asks for no administrator; it never touches the shop's data.

Unicode true
SetCompressor /SOLID lzma
RequestExecutionLevel user

Name "Steelyard"
OutFile "${TARGET}"
InstallDir "$LOCALAPPDATA\Programs\Steelyard"
InstallDirRegKey HKCU "Software\Steelyard" "Folder"

!include "MUI2.nsh"
!define MUI_FINISHPAGE_RUN "$INSTDIR\steelyard-window.exe"
!insertmacro MUI_PAGE_DIRECTORY
!insertmacro MUI_PAGE_INSTFILES
!insertmacro MUI_PAGE_FINISH
!insertmacro MUI_UNPAGE_CONFIRM
!insertmacro MUI_UNPAGE_INSTFILES
!insertmacro MUI_LANGUAGE "English"
!insertmacro MUI_LANGUAGE "Spanish"

!define UNINSTALL "Software\Microsoft\Windows\CurrentVersion\Uninstall\Steelyard"

Section "Steelyard"
  ; An older version's files must not stay among the new ones.
  RMDir /r "$INSTDIR\_internal"
  SetOutPath "$INSTDIR"
  File /r "${PROGRAM}/*"
  WriteUninstaller "$INSTDIR\remove.exe"
  CreateShortcut "$SMPROGRAMS\Steelyard.lnk" "$INSTDIR\steelyard-window.exe"
  WriteRegStr HKCU "Software\Steelyard" "Folder" "$INSTDIR"
  WriteRegStr HKCU "${UNINSTALL}" "DisplayName" "Steelyard"
  WriteRegStr HKCU "${UNINSTALL}" "UninstallString" '"$INSTDIR\remove.exe"'
  WriteRegStr HKCU "${UNINSTALL}" "InstallLocation" "$INSTDIR"
  WriteRegDWORD HKCU "${UNINSTALL}" "NoModify" 1
  WriteRegDWORD HKCU "${UNINSTALL}" "NoRepair" 1
SectionEnd

Section "Uninstall"
  RMDir /r "$INSTDIR\_internal"
  Delete "$INSTDIR\steelyard.exe"
  Delete "$INSTDIR\steelyard-window.exe"
  Delete "$INSTDIR\remove.exe"
  RMDir "$INSTDIR"
  Delete "$SMPROGRAMS\Steelyard.lnk"
  DeleteRegKey HKCU "${UNINSTALL}"
  DeleteRegKey HKCU "Software\Steelyard"
SectionEnd
